package pressweek.solver.audit;

import pressweek.data.plan.Rule;

/**
 * Something in a plan that a rule does not allow or that does not add up.
 *
 * @param rule rule that is broken; {@link Rule#hard()} always holds
 * @param subject run, order line, press, insert part or {@code plan} that it is about
 * @param message what we saw and what we expected, for a scheduler, with ids and local times
 */
public record Finding(Rule rule, String subject, String message) {}
