package pressweek.examples;

/**
 * A drawn insert part.
 *
 * @param id insert part number
 * @param kind kind of insert
 * @param thread thread in full
 * @param lengthMm length of a stud; 0 for other kinds
 * @param material steel, stainless or brass
 * @param loadTenths tenths of a second to load one by hand
 */
record DrawnInsert(
    String id, String kind, String thread, int lengthMm, String material, int loadTenths) {
  /** True when it may go into food-grade work. */
  boolean food() {
    return material.equals("A2");
  }
}
