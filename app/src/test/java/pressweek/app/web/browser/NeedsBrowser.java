package pressweek.app.web.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/** Tests in a real browser: skipped with the reason where there is none, unless it is required. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("full")
@ExtendWith(BrowserThere.class)
@interface NeedsBrowser {}
