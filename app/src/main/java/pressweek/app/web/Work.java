package pressweek.app.web;

import java.io.IOException;
import pressweek.app.store.StoreTrouble;

/** What a route does. */
@FunctionalInterface
interface Work {
  void on(Asked asked) throws StoreTrouble, IOException;
}
