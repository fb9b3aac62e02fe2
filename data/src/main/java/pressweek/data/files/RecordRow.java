package pressweek.data.files;

import java.util.Optional;

/**
 * A row of {@code records.csv}: a declaration.
 *
 * @param at where it stands
 * @param what resin id or grade, {@code resin:colour} or colour, or insert
 * @param need what it is declared for, for example {@code food}, {@code rohs}
 * @param date date of the declaration; empty when not known
 * @param expires when it ends; empty for never
 * @param exemption exemption that it relies on; may be empty
 * @param certificate where it is kept; may be empty
 */
public record RecordRow(
    At at,
    String what,
    String need,
    Optional<When> date,
    Optional<When> expires,
    String exemption,
    String certificate) {}
