package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideWords.Phrase;
import pressweek.reports.guide.RuleSentences.Said;
import pressweek.reports.markup.Element;

/**
 * The guide to an item code as a page to print: how a code is built, every symbol, the rules in
 * plain sentences, and what is easily mixed up.
 */
public final class CodeSheet {
  private final Guide guide;
  private final Phrasebook words;
  private final CodePicture picture;

  private CodeSheet(Guide guide) {
    this.guide = guide;
    this.words = new Phrasebook(guide);
    this.picture = new CodePicture(guide, words);
  }

  /**
   * The page of a guide.
   *
   * @param plant name of the plant; may be empty
   */
  public static String html(Guide guide, String plant) {
    return new CodeSheet(guide).page(plant);
  }

  private String page(String plant) {
    String title = guide.sheet().name().isEmpty() ? "Item code" : guide.sheet().name();
    List<Element> content = new ArrayList<>();
    Element head = Element.of("header").add("h1", title);
    if (!plant.isBlank() && !title.contains(plant)) {
      head.add(Element.of("p").text(plant));
    }
    content.add(head);
    content.add(Paper.section("build", "How a code is built", build()));
    content.add(
        Paper.section(
            "symbols",
            "What the symbols mean",
            List.of(Element.of("div", "boxes").addAll(new SymbolBoxes(guide, words).boxes()))));
    RuleSentences sentences = new RuleSentences(guide, words);
    Element foot = Element.of("div", "lists");
    list(foot, "Rules", sentences.rules());
    list(foot, "Standard when the code does not say", sentences.defaults());
    list(foot, "When a customer says", everyday());
    list(foot, "When a customer does not say", assumed(sentences));
    list(
        foot,
        "Easily mixed up",
        new MixUps(guide, words).sentences().stream().map(s -> new Said(s, "", "")).toList());
    content.add(foot);
    return Paper.page(title, content);
  }

  private List<Element> build() {
    List<Element> content = new ArrayList<>();
    boolean first = true;
    for (Family family : guide.families()) {
      Optional<Drawn> example = CodePicture.example(guide, family);
      Element row = Element.of("div", first ? "family first" : "family");
      row.add(Element.of("h3").text(family.name()));
      row.add(Element.of("p", "shape").text(picture.shape(family)));
      if (example.isPresent() && first) {
        content.add(picture.of(example.get()));
      }
      example.ifPresent(drawn -> row.add(Paper.code(drawn.code())));
      content.add(row);
      first = false;
    }
    List<String> notes = new ArrayList<>();
    boolean optional =
        guide.families().stream().flatMap(f -> f.parts().stream()).anyMatch(p -> p.optional());
    if (optional) {
      notes.add("Parts in [brackets] may be left out.");
    }
    notes.add(
        guide.ignoreCase()
            ? "Capital and small letters are the same."
            : "Capital and small letters are not the same.");
    content.add(Element.of("p", "fill").text(String.join(" ", notes)));
    return content;
  }

  private static void list(Element foot, String heading, List<Said> said) {
    if (said.isEmpty()) {
      return;
    }
    Element list = Element.of("ul");
    for (Said one : said) {
      Element item = Element.of("li").add("b", one.sentence());
      item.text(one.because().isEmpty() ? "" : ": " + one.because());
      if (!one.family().isEmpty()) {
        item.add(Element.of("small").text(" (" + one.family() + ")"));
      }
      list.add(item);
    }
    foot.add(Element.of("section", "list").add("h2", heading).add(list));
  }

  private List<Said> everyday() {
    List<Said> said = new ArrayList<>();
    for (Phrase phrase : guide.words().everyday()) {
      String means = "\u201c" + String.join("\u201d, \u201c", phrase.words()) + "\u201d";
      said.add(new Said(means, words.meaning(phrase.set()) + reason(phrase), ""));
    }
    return said;
  }

  private static String reason(Phrase phrase) {
    return phrase.because().isEmpty() ? "" : "; " + phrase.because();
  }

  private List<Said> assumed(RuleSentences sentences) {
    List<Said> said = new ArrayList<>();
    for (Phrase phrase : guide.words().assume()) {
      String means = words.meaning(phrase.set());
      String when = phrase.when().isEmpty() ? "" : " for " + sentences.subject(phrase.when());
      said.add(new Said(Phrasebook.capital(means + when), phrase.because(), ""));
    }
    return said;
  }
}
