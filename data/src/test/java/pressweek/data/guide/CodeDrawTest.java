package pressweek.data.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.problem.Attribute;

class CodeDrawTest {
  private static Guide quillback;

  @BeforeAll
  static void readTheDemoGuide() throws IOException {
    String text = Files.readString(Path.of("../examples/quillback-week/guide.json"));
    quillback = GuideReader.read(Json.object(text)).guide().orElseThrow();
  }

  private static List<String> codes(long seed, Wish wish, int count) {
    CodeDraw draw = new CodeDraw(quillback, seed);
    List<String> codes = new ArrayList<>();
    for (Family family : quillback.families()) {
      for (int i = 0; i < count; i++) {
        draw.good(family, wish).ifPresent(drawn -> codes.add(drawn.code()));
      }
    }
    return codes;
  }

  @Test
  void goodCodesMeanWhatTheyWereDrawnFor() {
    CodeDraw draw = new CodeDraw(quillback, 3);
    for (Family family : quillback.families()) {
      for (int i = 0; i < 300; i++) {
        Drawn drawn = draw.good(family, Wish.ANY).orElseThrow();
        Decoded decoded = quillback.decode(drawn.code());
        assertThat(decoded.faults()).isEmpty();
        assertThat(decoded.family()).isEqualTo(family.name());
        for (Attribute attribute : decoded.attributes()) {
          assertThat(drawn.values()).containsEntry(attribute.name(), attribute.value());
        }
        assertThat(drawn.values()).hasSameSizeAs(decoded.attributes());
      }
    }
  }

  @Test
  void sameSeedDrawsTheSameCodes() {
    assertThat(codes(5, Wish.ANY, 50)).isEqualTo(codes(5, Wish.ANY, 50));
    assertThat(codes(5, Wish.ANY, 50)).isNotEqualTo(codes(6, Wish.ANY, 50));
  }

  @Test
  void bareCodesLeaveOutWhatTheyMay() {
    assertThat(codes(1, new Wish(List.of(), true, false), 100))
        .hasSize(400)
        .allSatisfy(code -> assertThat(code).doesNotContain("/FC").doesNotContain("/RS"));
  }

  @Test
  void shuffledCodesChangePlacesOnlyWhereTheyMay() {
    Set<String> ends = new HashSet<>();
    for (String code : codes(1, new Wish(List.of(), false, true), 200)) {
      assertThat(quillback.decode(code).good()).isTrue();
      ends.add(code.endsWith("/FC/RS") ? "FC/RS" : code.endsWith("/RS/FC") ? "RS/FC" : "other");
    }
    assertThat(ends).containsExactlyInAnyOrder("FC/RS", "RS/FC", "other");
  }

  @Test
  void pinnedSymbolStandsInTheCode() {
    Family family = quillback.families().get(0);
    CodeDraw draw = new CodeDraw(quillback, 1);
    for (Pin pin : draw.space(family).pins()) {
      Optional<Drawn> drawn = draw.good(family, new Wish(List.of(pin), true, false));
      drawn.ifPresent(
          code ->
              pin.choices()
                  .values()
                  .forEach(choice -> assertThat(code.code()).contains(choice.text())));
    }
  }

  @Test
  void anyCodeMayBreakARule() {
    CodeDraw draw = new CodeDraw(quillback, 1);
    int refused = 0;
    for (int i = 0; i < 200; i++) {
      Drawn drawn = draw.any(quillback.families().get(0));
      assertThat(quillback.decode(drawn.code()).good()).isEqualTo(drawn.good());
      refused += drawn.good() ? 0 : 1;
    }
    assertThat(refused).isBetween(20, 180);
  }

  @Test
  void searchFindsWhatThereIsAndSettlesWhatThereIsNot() {
    CodeSpace space = new CodeSpace(quillback, quillback.families().get(0));
    Clause ball = new Clause("head_style", List.of("ball knob"));
    Clause tall = new Clause("insert_kind", List.of("tall"));
    Clause through = new Clause("insert_kind", List.of("through"));
    Drawn found = space.find(Quest.goodWhere(List.of(ball, tall))).drawn().orElseThrow();
    assertThat(quillback.decode(found.code()).good()).isTrue();
    assertThat(found.values()).containsEntry("insert_kind", "tall");
    CodeSpace.Found none = space.find(Quest.goodWhere(List.of(ball, through)));
    assertThat(none.drawn()).isEmpty();
    assertThat(none.settled()).isTrue();
  }

  @Test
  void searchThatIsTooLongSaysThatItIsNotSettled() {
    List<String> fields = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<String> form = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      fields.add("\"f%d\": {\"table\": {\"a\": {}, \"b\": {}, \"c\": {}}}".formatted(i));
      form.add("{\"when\": {\"f%d\": \"a\"}, \"default\": {\"any\": \"b\"}}".formatted(i));
      form.add("{\"when\": {\"f%d\": \"b\"}, \"default\": {\"any\": \"a\"}}".formatted(i));
      names.add("{f%d}".formatted(i));
    }
    Guide guide =
        GuideReader.read(
                Json.object(
                    "{\"schema\": \"pressweek-guide/1\", \"fields\": {"
                        + String.join(",", fields)
                        + "}, \"parts\": {\"p\": {\"forms\": [\""
                        + String.join(".", names)
                        + "\"]}}, \"families\": [{\"name\": \"n\", \"parts\": [\"p\"]}], \"rules\": ["
                        + String.join(",", form)
                        + "]}"))
            .guide()
            .orElseThrow();
    CodeSpace space = new CodeSpace(guide, guide.families().get(0));
    Quest never = new Quest(List.of(), List.of(), false, drawn -> !drawn.good());
    assertThat(space.find(never).settled()).isFalse();
  }

  @Test
  void encoderNeedsNoWordForWhatAnItemLacks() {
    Guide guide =
        GuideReader.read(
                Json.object(
                    """
                    {"schema": "pressweek-guide/1", "separator": "-",
                     "fields": {"metal": {"table": {
                       "Z": {"metal": "steel", "finish": "zinc"},
                       "N": {"metal": "steel", "finish": "nickel"},
                       "W": {"metal": "steel", "finish": ""}}}},
                     "parts": {"metal": {"forms": ["{metal}"]}},
                     "families": [{"name": "insert", "parts": ["metal"]}]}
                    """))
            .guide()
            .orElseThrow();
    assertThat(guide.encoder().encode(Map.of("metal", "steel")).code()).isEqualTo("W");
    assertThat(guide.encoder().encode(Map.of("metal", "steel", "finish", "nickel")).code())
        .isEqualTo("N");
  }
}
