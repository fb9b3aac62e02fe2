package pressweek.data.files;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A row of {@code standards.csv}: a recorded cycle.
 *
 * @param at where it stands
 * @param mold mold
 * @param resin resin; empty for all
 * @param press a press, or {@code horizontal}, {@code vertical}, {@code fixed}, {@code shuttle},
 *     {@code rotary}; empty for all
 * @param cycleS whole cycle in seconds, loading counted
 * @param loadS seconds of it that are loading
 * @param cureS seconds of it that are curing
 * @param scrapPct scrap, percent of all parts
 * @param startupShots shots thrown away after a change
 * @param operatorThousandths thousandths of an operator
 */
public record StandardRow(
    At at,
    String mold,
    String resin,
    String press,
    double cycleS,
    OptionalDouble loadS,
    OptionalDouble cureS,
    OptionalDouble scrapPct,
    OptionalInt startupShots,
    OptionalInt operatorThousandths) {}
