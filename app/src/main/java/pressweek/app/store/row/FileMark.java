package pressweek.app.store.row;

import java.time.Instant;

/**
 * Which contents of an input file were taken.
 *
 * @param file name of the file in the folder
 * @param sha256 SHA-256 of its bytes in hexadecimal
 * @param by who took it
 * @param at when
 */
public record FileMark(String file, String sha256, String by, Instant at) {}
