package pressweek.app.web.browser;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionConfigurationException;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Whether this machine has Chromium and its driver. Both are named, never looked for elsewhere, so
 * that nothing is fetched. Where the system property {@value #REQUIREMENT} is "required", a machine
 * without them fails the tests.
 */
final class BrowserThere implements ExecutionCondition {
  static final String REQUIREMENT = "pressweek.browser";

  /** The browser itself; the property tells where it is when it is not where Debian puts it. */
  static Path browser() {
    return Path.of(System.getProperty("pressweek.browser.chromium", "/usr/bin/chromium"));
  }

  /** What steers the browser. */
  static Path driver() {
    return Path.of(System.getProperty("pressweek.browser.driver", "/usr/bin/chromedriver"));
  }

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    Optional<Path> lacking =
        Stream.of(browser(), driver()).filter(p -> !Files.isExecutable(p)).findFirst();
    if (lacking.isEmpty()) {
      return ConditionEvaluationResult.enabled(browser() + " is there");
    }
    String reason = "there is no " + lacking.get() + " to test pages with";
    if (System.getProperty(REQUIREMENT, "").equals("required")) {
      throw new ExtensionConfigurationException(reason + ", and it is required");
    }
    return ConditionEvaluationResult.disabled(reason);
  }
}
