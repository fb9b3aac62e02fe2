package pressweek.data.proof;

import pressweek.data.guide.Choice;
import pressweek.data.guide.CodeReading.Piece;
import pressweek.data.guide.CodeSpace;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.guide.Form.Slot;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Part;

/** Where in the guide something stands. */
final class Places {
  private Places() {}

  /** The line of the symbol, or else the part, that a piece of a code was read as. */
  static int line(Family family, Guide guide, Piece piece) {
    CodeSpace space = new CodeSpace(guide, family);
    for (Part part : family.parts()) {
      if (part.name().equals(piece.part())) {
        for (Form form : part.forms()) {
          for (Form.Piece one : form.pieces()) {
            if (one instanceof Slot slot && slot.field() instanceof Field.Table) {
              for (Choice choice : space.choices(slot.field())) {
                if (choice.text().equalsIgnoreCase(piece.text())
                    && piece.says().entrySet().containsAll(choice.sets().entrySet())) {
                  return choice.line();
                }
              }
            }
          }
        }
        return part.line();
      }
    }
    return family.line();
  }
}
