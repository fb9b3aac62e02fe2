package pressweek.data.published;

/**
 * What a stainless steel is called in the shop, and the steel group of ISO 3506-1 it falls into. No
 * such name names one grade: it leaves the strength class open, and 18-8 even the alloy.
 *
 * @param name everyday name: {@code 304}
 * @param group steel group: {@code A2}
 * @param note what the name leaves open
 */
public record EverydayName(String name, String group, String note) {}
