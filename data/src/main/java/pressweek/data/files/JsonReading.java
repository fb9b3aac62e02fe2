package pressweek.data.files;

import java.util.List;
import java.util.Optional;

/**
 * What was read of a JSON file.
 *
 * @param tree the file as a tree; empty when it is not JSON
 * @param findings what was wrong with it
 */
public record JsonReading(Optional<JsonTree> tree, List<InputError> findings) {
  public JsonReading {
    findings = List.copyOf(findings);
  }

  /** The object that the whole file is; empty when it is not one. */
  public Optional<JsonTree.Obj> object() {
    return tree.filter(JsonTree.Obj.class::isInstance).map(JsonTree.Obj.class::cast);
  }
}
