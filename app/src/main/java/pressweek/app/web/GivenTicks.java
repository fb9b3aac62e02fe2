package pressweek.app.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.BadRequestResponse;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import pressweek.app.store.row.Tick;

/** Reads ticks as a tablet sends them. One that cannot be read does not keep back the others. */
final class GivenTicks {
  private static final int LONGEST = 300;
  private static final int MOST_PIECES = 100_000_000;

  /** RFC 9562, section 4. */
  private static final Pattern ID =
      Pattern.compile("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}");

  private final String plan;
  private final String account;
  private final Instant now;

  /**
   * A tick as it was sent.
   *
   * @param tick the tick
   * @param undo whether it takes back what stands on its pull
   */
  record Given(Tick tick, boolean undo) {}

  /**
   * What was sent.
   *
   * @param ticks what can be read, in its order
   * @param refused why not, by id
   */
  record Read(List<Given> ticks, Map<String, String> refused) {}

  /** A fault of a tick, in words. */
  private static final class Faulty extends Exception {
    private static final long serialVersionUID = 1;

    Faulty(String words) {
      super(words);
    }
  }

  /**
   * Ticks on a plan.
   *
   * @param plan its number
   * @param account who sends them
   * @param now when they arrive
   */
  GivenTicks(String plan, String account, Instant now) {
    this.plan = plan;
    this.account = account;
    this.now = now;
  }

  /** Reads them. */
  Read read(JsonNode list) {
    List<Given> ticks = new ArrayList<>();
    Map<String, String> refused = new LinkedHashMap<>();
    for (JsonNode json : list) {
      String id = json.path("id").asText("");
      if (!json.path("id").isTextual() || id.length() > LONGEST) {
        throw new BadRequestResponse("a tick has no \"id\"; expected a UUID by RFC 9562");
      }
      try {
        ticks.add(new Given(tick(json, id), json.path("undo").asBoolean(false)));
      } catch (Faulty e) {
        refused.put(id, String.valueOf(e.getMessage()));
      }
    }
    return new Read(List.copyOf(ticks), refused);
  }

  private Tick tick(JsonNode json, String id) throws Faulty {
    if (!ID.matcher(id).matches()) {
      throw new Faulty("its id is no UUID by RFC 9562");
    }
    String key = text(json, "key");
    if (key.isEmpty()) {
      throw new Faulty("\"key\" is missing; expected the key of a pull");
    }
    int missing = pieces(json, "short");
    String reason = text(json, "reason");
    if (missing > 0 && reason.isBlank()) {
      throw new Faulty("pieces are short without a reason; expected one");
    }
    Tick.Stamp stamp = new Tick.Stamp(by(json), when(json), now);
    int brought = pieces(json, "pieces");
    return new Tick(
        UUID.fromString(id), key, plan, brought, missing, reason, Optional.empty(), stamp);
  }

  private static String text(JsonNode json, String name) throws Faulty {
    JsonNode node = json.path(name);
    if (node.isMissingNode() || node.isNull()) {
      return "";
    }
    if (!node.isTextual() || node.textValue().length() > LONGEST) {
      throw new Faulty("\"" + name + "\" is no text of at most " + LONGEST + " letters");
    }
    return node.textValue();
  }

  private static int pieces(JsonNode json, String name) throws Faulty {
    JsonNode node = json.path(name);
    if (node.isMissingNode() || node.isNull()) {
      return 0;
    }
    boolean good = node.isIntegralNumber() && node.canConvertToInt();
    if (!good || node.intValue() < 0 || node.intValue() > MOST_PIECES) {
      throw new Faulty("\"" + name + "\" is no number of pieces");
    }
    return node.intValue();
  }

  /** Who ticked; a tablet can send later, when another one is logged in, and that is said. */
  private String by(JsonNode json) throws Faulty {
    String by = text(json, "by").strip();
    return by.isEmpty() || by.equals(account) ? account : by + " (sent by " + account + ")";
  }

  /** When it was ticked by the tablet's clock, minutes since 1970; a clock ahead counts as now. */
  private Instant when(JsonNode json) {
    JsonNode at = json.path("at");
    boolean good = at.isIntegralNumber() && at.canConvertToInt() && at.intValue() >= 0;
    Instant given = good ? Instant.ofEpochSecond(at.intValue() * 60L) : now;
    return given.isAfter(now) ? now : given;
  }
}
