package pressweek.app.store.row;

import java.time.Instant;

/**
 * Somebody who is logged in. The token itself is not kept, only its SHA-256.
 *
 * @param user name of the person
 * @param csrf the word that every change must bring along
 * @param expires until when it holds
 */
public record Session(String user, String csrf, Instant expires) {
  /** Without the word, so that no message ever shows it. */
  @Override
  public String toString() {
    return user + " until " + expires;
  }
}
