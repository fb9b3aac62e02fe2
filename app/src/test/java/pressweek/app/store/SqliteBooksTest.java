package pressweek.app.store;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteBooksTest extends BooksTest {
  @TempDir Path folder;

  @Override
  String newTarget() {
    return folder.resolve("new/folders/week.db").toString();
  }
}
