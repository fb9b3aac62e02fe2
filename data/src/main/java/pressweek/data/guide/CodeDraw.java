package pressweek.data.guide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import pressweek.data.guide.Form.Slot;

/**
 * Codes of a guide drawn at random: the same ones in the same order for the same seed. A code that
 * the rules do not allow is mended where they mind it, until they do.
 */
public final class CodeDraw {
  private static final int STARTS = 8;
  private static final int MENDS = 40;
  private static final int ONE_IN = 7;

  private final Random random;
  private final Map<Family, CodeSpace> spaces = new IdentityHashMap<>();

  /** A draw from a guide. */
  public CodeDraw(Guide guide, long seed) {
    random = new Random(seed);
    for (Family family : guide.families()) {
      spaces.put(family, new CodeSpace(guide, family));
    }
  }

  /** The codes of a family of the guide. */
  public CodeSpace space(Family family) {
    CodeSpace space = spaces.get(family);
    if (space == null) {
      throw new IllegalArgumentException("no family of this guide: " + family.name());
    }
    return space;
  }

  /** A whole number from 0 to less than {@code bound}. */
  public int below(int bound) {
    return random.nextInt(bound);
  }

  /** The code of an item; empty when none was come upon, which does not mean that there is none. */
  public Optional<Drawn> good(Family family, Wish wish) {
    CodeSpace space = space(family);
    for (int start = 0; start < STARTS; start++) {
      List<List<Picked>> parts = parts(space, wish);
      for (int mend = 0; mend < MENDS; mend++) {
        List<Picked> flat = parts.stream().flatMap(List::stream).toList();
        List<String> blamed = blamed(space, flat);
        if (blamed.isEmpty()) {
          return Optional.of(space.drawn(ordered(space, parts, wish)));
        }
        mend(space, wish, parts, blamed);
      }
    }
    return Optional.empty();
  }

  /** A code that can be read, whatever the rules think of it. */
  public Drawn any(Family family) {
    CodeSpace space = space(family);
    return space.drawn(ordered(space, parts(space, Wish.ANY), Wish.ANY));
  }

  private List<List<Picked>> parts(CodeSpace space, Wish wish) {
    List<List<Picked>> parts = new ArrayList<>();
    for (int part = 0; part < space.family().parts().size(); part++) {
      parts.add(part(space, wish, part));
    }
    return parts;
  }

  /** A part drawn anew: not at all, once, or as often as it may come. */
  private List<Picked> part(CodeSpace space, Wish wish, int index) {
    Part part = space.family().parts().get(index);
    List<Pin> pins = wish.pins().stream().filter(pin -> pin.part() == index).toList();
    boolean leaveOut = part.optional() && pins.isEmpty() && (wish.bare() || random.nextBoolean());
    if (leaveOut) {
      return List.of();
    }
    int times = wish.bare() || random.nextInt(3) > 0 ? 1 : 1 + random.nextInt(part.repeat());
    Map<String, Picked> picked = new LinkedHashMap<>();
    List<Pin> open = new ArrayList<>(pins);
    do {
      Picked one = pick(space, index, open);
      picked.put(one.text(), one);
      times--;
    } while (!open.isEmpty() && picked.size() < part.repeat() || times > 0);
    return List.copyOf(picked.values());
  }

  /** A part with the first of the open pins. */
  private Picked pick(CodeSpace space, int index, List<Pin> open) {
    List<Form> forms = space.family().parts().get(index).forms();
    Pin pin =
        open.isEmpty() ? new Pin(index, random.nextInt(forms.size()), Map.of()) : open.remove(0);
    Form form = forms.get(pin.form());
    List<Choice> choices = new ArrayList<>();
    for (int i = 0; i < form.pieces().size(); i++) {
      if (form.pieces().get(i) instanceof Slot slot) {
        Choice pinned = pin.choices().get(i);
        choices.add(pinned == null ? choice(space.choices(slot.field())) : pinned);
      }
    }
    return new Picked(index, form, choices);
  }

  /** Any of the choices; what stands for none or standard less often than symbols. */
  private Choice choice(List<Choice> choices) {
    Choice choice = choices.get(random.nextInt(choices.size()));
    boolean fill = choice.symbol().isEmpty() && random.nextInt(ONE_IN) > 0;
    return fill ? choices.get(random.nextInt(choices.size())) : choice;
  }

  private static List<String> blamed(CodeSpace space, List<Picked> picked) {
    List<Map<String, String>> says = new ArrayList<>();
    picked.forEach(part -> says.addAll(part.says()));
    return RuleBook.of(says, space.rules()).faults().stream()
        .findFirst()
        .map(RuleBook.Fault::attributes)
        .orElse(List.of());
  }

  /** Draws anew something that says what the rules mind; now and then any part. */
  private void mend(CodeSpace space, Wish wish, List<List<Picked>> parts, List<String> blamed) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).stream().anyMatch(part -> part.saysAny(blamed))) {
        places.add(i);
      }
    }
    boolean anywhere = places.isEmpty() || random.nextInt(ONE_IN) == 0;
    int place = anywhere ? random.nextInt(parts.size()) : places.get(random.nextInt(places.size()));
    boolean whole = anywhere || random.nextInt(ONE_IN) == 0;
    if (whole || !mendField(space, wish, parts, place, blamed)) {
      parts.set(place, part(space, wish, place));
    }
  }

  /** Draws one field of a part anew; false when none of its fields is to blame. */
  private boolean mendField(
      CodeSpace space, Wish wish, List<List<Picked>> parts, int place, List<String> blamed) {
    List<Picked> own = new ArrayList<>(parts.get(place));
    int index = random.nextInt(own.size());
    Picked part = own.get(index);
    List<Integer> fields = new ArrayList<>();
    for (int i = 0; i < part.choices().size(); i++) {
      Choice choice = part.choices().get(i);
      boolean pinned = wish.pins().stream().anyMatch(pin -> pin.choices().containsValue(choice));
      if (!pinned && choice.sets().keySet().stream().anyMatch(blamed::contains)) {
        fields.add(i);
      }
    }
    if (fields.isEmpty()) {
      return false;
    }
    int field = fields.get(random.nextInt(fields.size()));
    List<Choice> choices = new ArrayList<>(part.choices());
    choices.set(field, choice(space.choices(part.form().fields().get(field))));
    own.set(index, new Picked(place, part.form(), choices));
    parts.set(place, own);
    return true;
  }

  /** All parts in the order of the code. */
  private List<Picked> ordered(CodeSpace space, List<List<Picked>> parts, Wish wish) {
    List<Picked> ordered = new ArrayList<>();
    int next = 0;
    for (List<Part> block : Blocks.of(space.family().parts())) {
      List<Picked> own = new ArrayList<>();
      for (int i = 0; i < block.size(); i++) {
        own.addAll(parts.get(next++));
      }
      if (wish.shuffled() && block.size() > 1) {
        Collections.shuffle(own, random);
      }
      ordered.addAll(own);
    }
    return ordered;
  }
}
