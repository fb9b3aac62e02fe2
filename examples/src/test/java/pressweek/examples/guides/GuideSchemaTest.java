package pressweek.examples.guides;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code docs/guide.schema.json}, against which an editor checks a guide while it is written. */
class GuideSchemaTest {
  private static final Path FILE = Path.of("..", "docs", "guide.schema.json");
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(GuideFiles.text(FILE), InputFormat.JSON);

  private static final String GOOD =
      """
      {'schema': 'pressweek-guide/1', 'name': 'Good', 'separator': '-', 'ignore_case': true,
       'fill': {'short': '_', 'side': 'right'},
       'fields': {
         'head': {'table': {'A': {'head_size_mm': 40, 'words': ['a', 'b']}, 'B': 'text'}},
         'length': {'sets': 'length_mm', 'width': 4, 'number': {'unit': 'mm', 'decimals': 2, 'min': 8}},
         'option': {'mixed': true, 'table': {'R': {'colour': 'red'}}},
         'special': {'special': {'from': '01', 'to': '99'}}},
       'parts': {
         'head': {'forms': ['{head}', {'form': '{head}F', 'sets': {'hub': 'solid'}}]},
         'stud': {'forms': ['S{length}'], 'optional': true, 'any_order': true},
         'option': {'forms': ['{option}'], 'repeat': 3},
         'special': {'forms': ['X{special}']}},
       'families': [{'name': 'knob', 'parts': ['head', 'stud', 'option', 'special']}],
       'rules': [{'when': {'colour': 'red|*'}, 'never': {'length_mm': ''}, 'because': 'so'},
                 {'then': {'resin': 'PP'}}],
       'words': {'measures': [{'attribute': 'length_mm', 'words': ['long'], 'after_thread': true}],
                 'assume': [{'set': {'colour': 'red'}}], 'ignore': ['the'], 'nearest_pct': 3}}
      """
          .replace('\'', '"');

  private static List<String> faults(String json) {
    return SCHEMA.validate(json, InputFormat.JSON).stream().map(Error::toString).toList();
  }

  static List<Path> folders() {
    return GuideFiles.folders();
  }

  static List<String> guidesOfThePage() {
    return GuideFiles.guidesOfThePage();
  }

  @ParameterizedTest
  @MethodSource("folders")
  void guideOfAFolderKeepsTheSchema(Path folder) {
    assertThat(faults(GuideFiles.text(folder.resolve("guide.json")))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("guidesOfThePage")
  void guideOfThePageKeepsTheSchemaAndReads(String guide) {
    assertThat(faults(guide)).isEmpty();
    assertThat(GuideFiles.findings(guide)).isEmpty();
  }

  @Test
  void allFoldersAreFound() {
    assertThat(folders().stream().map(Path::toString))
        .contains("quillback-week", "quillback-small")
        .filteredOn(name -> name.startsWith("guides"))
        .hasSizeGreaterThanOrEqualTo(5);
  }

  @Test
  void goodGuideIsGood() {
    assertThat(faults(GOOD)).isEmpty();
    assertThat(GuideFiles.findings(GOOD)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        // unknown keys at each level
        "'name': 'Good'          ; 'nmae': 'Good'                   ; nmae",
        "'side': 'right'         ; 'sied': 'right'                  ; sied",
        "'decimals': 2           ; 'decimal': 2                     ; decimal",
        "'from': '01'            ; 'from': '01', 'step': 2          ; step",
        "'optional': true        ; 'optoinal': true                 ; optoinal",
        "'sets': {'hub': 'solid'}; 'set': {'hub': 'solid'}          ; set",
        "'name': 'knob'          ; 'name': 'knob', 'part': []       ; part",
        "'because': 'so'         ; 'becuase': 'so'                  ; becuase",
        "'after_thread': true    ; 'behind_thread': true            ; behind_thread",
        "'ignore'                ; 'ignored'                        ; ignored",
        // two of three, or none
        "'special': {'from'      ; 'number': {}, 'special': {'from' ; fields",
        "'number': {'unit': 'mm', 'decimals': 2, 'min': 8} ; 'width': 4 ; fields",
        "'then': {'resin'        ; 'only': {'hub': 'x'}, 'then': {'resin' ; rules",
        "'then': {'resin': 'PP'} ; 'because': 'so'                  ; rules",
        // values
        "'schema': 'pressweek-guide/1' ; 'schema': 'pressweek-guide/9' ; schema",
        "'short': '_'            ; 'short': '__'                    ; short",
        "'side': 'right'         ; 'side': 'top'                    ; side",
        "'width': 4              ; 'width': 0                       ; width",
        "'decimals': 2           ; 'decimals': 1.5                  ; decimals",
        "'repeat': 3             ; 'repeat': 0                      ; repeat",
        "'from': '01'            ; 'from': 'a1'                     ; from",
        "'S{length}'             ; 'S{length'                       ; forms",
        "'S{length}'             ; ''                               ; forms",
        "{'resin': 'PP'}         ; {'resin': 'PP|ABS'}              ; resin",
        "{'resin': 'PP'}         ; {'resin': '*'}                   ; resin",
        "{'resin': 'PP'}         ; {'resin': ''}                    ; resin",
        "{'resin': 'PP'}         ; {}                               ; then",
        "'attribute': 'length_mm'; 'attribute': 'length'            ; attribute",
        "'nearest_pct': 3        ; 'nearest_pct': 300               ; nearest_pct",
        "'mixed': true           ; 'mixed': true, 'sets': 'colour'  ; sets",
        "{'colour': 'red'}}}     ; 'red'}}                          ; option",
        "'head', 'stud', 'option', 'special' ; ~~                    ; parts",
      })
  void brokenGuideIsRefused(String good, String broken, String where) {
    String from = good.strip().replace('\'', '"');
    String to = broken.strip().replace('\'', '"');
    assertThat(GOOD).contains(from);
    assertThat(String.join("\n", faults(GOOD.replace(from, to)))).contains(where.strip());
    assertThat(GuideFiles.findings(GOOD.replace(from, to))).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({"schema", "fields", "parts", "families"})
  void keyThatMustBeThereIsMissed(String key) {
    String without = GOOD.replace('"' + key + "\":", "\"name\":");
    assertThat(String.join("\n", faults(without))).contains(key);
  }

  @Test
  void everyKeyIsDescribed() throws IOException {
    List<String> bare = new ArrayList<>();
    JsonNode root = new ObjectMapper().readTree(FILE.toFile());
    collectBare(root, "", bare);
    assertThat(bare).isEmpty();
    assertThat(root.path("$id").asText()).doesNotContain("//");
  }

  /** Properties without a description, but for those that only forbid. */
  private static void collectBare(JsonNode node, String path, List<String> bare) {
    if (!path.endsWith("/then")) {
      node.path("properties")
          .properties()
          .forEach(
              property -> {
                if (property.getValue().path("description").asText().isEmpty()
                    && !path.endsWith("/if")) {
                  bare.add(path + "/" + property.getKey());
                }
              });
    }
    node.properties()
        .forEach(child -> collectBare(child.getValue(), path + "/" + child.getKey(), bare));
    for (int i = 0; i < node.size() && node.isArray(); i++) {
      collectBare(node.get(i), path + "/" + i, bare);
    }
  }
}
