package pressweek.data.problem;

/**
 * When a mold has to be serviced.
 *
 * @param mold mold
 * @param shotsLeft shots that it may still make before its service; 0 or less when it is due
 * @param shotsBetween shots between two services, at least 1
 * @param minutes minutes of the clock that a service takes, off the press
 */
public record MoldService(String mold, int shotsLeft, int shotsBetween, int minutes) {}
