package pressweek.data.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.files.InputError;

/** Fields of fixed width and what fills them, on the smallest guide that shows it. */
class FillTest {
  private static final String GUIDE =
      """
      {"schema": "pressweek-guide/1", "fill": {"short": "_", "none": "-", "standard": "0"},
       "fields": {"metal": {"width": 2, "table": {
                    "Z": {"metal": "steel", "finish": "zinc"}, "W": {"metal": "steel", "finish": ""}}},
                  "length": {"width": 3, "fill": {"short": "", "standard": ""},
                             "number": {"decimals": 1, "min": 1, "max": 60}},
                  "special": {"width": 3, "special": {"from": "01", "to": "20"}}},
       "parts": {"all": {"forms": ["{metal}{length}{special}"]}},
       "families": [{"name": "stud", "parts": ["all"]}],
       "rules": [{"default": {"metal": "steel"}},
                 {"when": {"metal": "steel"}, "default": {"finish": "zinc"}},
                 {"default": {"length": "20"}}]}
      """;

  private static GuideReader.Result read(String json) {
    return GuideReader.read(Json.object(json));
  }

  private static Guide guide() {
    assertThat(read(GUIDE).findings()).isEmpty();
    return read(GUIDE).guide().orElseThrow();
  }

  private static Map<String, String> values(Decoded decoded) {
    assertThat(decoded.faults()).isEmpty();
    Map<String, String> values = new TreeMap<>();
    decoded.attributes().forEach(attribute -> values.put(attribute.name(), attribute.value()));
    return values;
  }

  @ParameterizedTest
  @CsvSource({
    "Z_125000, '{finish=zinc, length=12.5, metal=steel}', false",
    "00125000, '{finish=zinc, length=12.5, metal=steel}', false",
    "W_010---, '{length=1, metal=steel}', false",
    "--60007_, '{length=60, special=07}', true",
    "Z_---20_, '{finish=zinc, metal=steel, special=20}', true"
  })
  void codeIsReadAndWrittenBack(String code, String values, boolean special) {
    Guide guide = guide();
    Decoded decoded = guide.decode(code);
    assertThat(values(decoded).toString()).isEqualTo(values);
    assertThat(decoded.special()).isEqualTo(special);
    Encoded encoded = guide.encoder().encode(values(decoded));
    assertThat(encoded.faults()).isEmpty();
    assertThat(values(guide.decode(encoded.code()))).isEqualTo(values(decoded));
  }

  @ParameterizedTest
  @CsvSource({
    "Z_125007, 6",
    "Z_12507-, 6",
    "Z_125210, 6",
    "Z_125, 6",
    "_Z125000, 1",
    "Z_000000, 3"
  })
  void codeThatIsFilledOtherwiseIsRefused(String code, int at) {
    CodeReading reading = guide().explain(code);
    assertThat(reading.decoded().good()).isFalse();
    assertThat(reading.fault().orElseThrow().start() + 1).isEqualTo(at);
  }

  /** A symbol that takes a finish away is for who asks for that, not for who says nothing. */
  @Test
  void draftForSteelDoesNotTakeItsFinishAway() {
    List<Draft> drafts = guide().encoder().drafts(Map.of("metal", "steel", "length", "20"), 1);
    assertThat(drafts).hasSize(1);
    assertThat(drafts.get(0).attributes()).containsEntry("finish", "zinc");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "{\"short\": \"\", \"standard\"; {\"short\": \"0\", \"side\": \"right\", \"standard\"; digits",
        "{\"short\": \"\", \"standard\"; {\"short\": \"9\", \"side\": \"left\", \"standard\"; digits",
        "{\"width\": 3, \"special\"; {\"width\": 1, \"special\"; longer than the width 1",
        "\"width\": 3, \"special\"; \"width\": 3, \"fill\": {\"short\": \"\"}, \"special\"; nothing fills"
      })
  void fillingThatCannotBeToldApartIsRefused(String from, String to, String message) {
    assertThat(GUIDE).contains(from.strip());
    GuideReader.Result result = read(GUIDE.replace(from.strip(), to.strip()));
    assertThat(result.guide()).isEmpty();
    assertThat(result.findings().stream().map(InputError::toString).toList().toString())
        .contains(message.strip());
  }
}
