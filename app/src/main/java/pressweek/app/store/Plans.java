package pressweek.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.GivenPlan;

/** The plans given out to the floor, in the order in which they were. */
public final class Plans {
  private final Database database;

  Plans(Database database) {
    this.database = database;
  }

  /**
   * Gives a plan out. A number is given out once: the same plan again changes nothing, another one
   * under that number is answered with {@link Answer.Stale}, whose version is 1.
   */
  public Answer<GivenPlan> give(GivenPlan plan) throws StoreTrouble {
    return database.write(
        handle -> {
          if (insert(handle, plan) == 1) {
            String about = "plan " + plan.number();
            History.write(handle, "gave out " + about, about, plan.given());
          }
          GivenPlan there = find(handle, plan.number()).orElseThrow();
          if (there.body().equals(plan.body())) {
            return new Answer.Done<>(there);
          }
          String what = "gave out another plan " + plan.number();
          return new Answer.Stale<>(1, what, there.given().by(), there.given().at());
        });
  }

  /** The plan given out last. */
  public Optional<GivenPlan> latest() throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM given_plan ORDER BY id DESC LIMIT 1")
                .map(Plans::plan)
                .findOne());
  }

  /** The plan with that number. */
  public Optional<GivenPlan> byNumber(String number) throws StoreTrouble {
    return database.read(handle -> find(handle, number));
  }

  /** The plans given out, the last one first. */
  public List<GivenPlan.Head> heads(int most) throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT number, made_by, made_at, why FROM given_plan
                    ORDER BY id DESC LIMIT :most
                    """)
                .bind("most", most)
                .map((row, context) -> new GivenPlan.Head(row.getString(1), Rows.change(row)))
                .list());
  }

  private static int insert(Handle handle, GivenPlan plan) {
    return handle
        .createUpdate(
            """
            INSERT INTO given_plan (number, body, seal, why, made_by, made_at)
            VALUES (:number, :body, :seal, :why, :by, :at)
            ON CONFLICT (number) DO NOTHING
            """)
        .bind("number", plan.number())
        .bind("body", plan.body().bytes())
        .bind("seal", plan.body().sha256())
        .bind("why", plan.given().why())
        .bind("by", plan.given().by())
        .bind("at", plan.given().at().toEpochMilli())
        .execute();
  }

  private static Optional<GivenPlan> find(Handle handle, String number) {
    return handle
        .createQuery("SELECT * FROM given_plan WHERE number = :number")
        .bind("number", number)
        .map(Plans::plan)
        .findOne();
  }

  private static GivenPlan plan(ResultSet row, StatementContext context) throws SQLException {
    String number = row.getString("number");
    return new GivenPlan(number, Rows.body(row, "plan " + number), Rows.change(row));
  }
}
