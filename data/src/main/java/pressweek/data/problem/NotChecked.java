package pressweek.data.problem;

/**
 * Something that could not be checked for want of data, or a figure that was assumed.
 *
 * @param what what is not checked or assumed, in a sentence
 * @param add the file or column that would let it be checked
 * @param lines order lines that it touches; the file that touches most would add most
 */
public record NotChecked(String what, String add, int lines) {}
