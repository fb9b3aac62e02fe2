package pressweek.reports.pulls;

import java.util.Optional;

/**
 * How a pull leaves its bin.
 *
 * @param inBin pieces of its lot in the bin before; empty when they are not known
 * @param bring pieces that are brought, at least as many as the run takes
 * @param back pieces that come back at least
 * @param words in words: {@code takes 400 of 1,000 in bin A-3}; may be empty
 */
public record Draw(Optional<Integer> inBin, int bring, int back, String words) {}
