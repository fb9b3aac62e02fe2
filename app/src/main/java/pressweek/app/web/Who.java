package pressweek.app.web;

/**
 * Who calls.
 *
 * @param name name; of the machine where nobody logs in
 * @param role what he does
 * @param token the word that every change must bring along
 */
record Who(String name, Role role, String token) {}
