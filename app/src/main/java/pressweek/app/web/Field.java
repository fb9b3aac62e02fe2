package pressweek.app.web;

/**
 * Something that a request brings along.
 *
 * @param name its name
 * @param type its type by JSON Schema: string, integer, boolean, array of objects or object; or
 *     {@link #TEXTS}
 * @param place where it stands
 * @param needed whether a request without it is refused
 * @param words what it is
 */
record Field(String name, String type, Place place, boolean needed, String words) {
  /** Where a field stands. */
  enum Place {
    /** In the JSON object that is the body. */
    BODY,
    /** In the query of the address. */
    QUERY
  }

  /** An array of strings. */
  static final String TEXTS = "texts";

  /** The version that every change of the week starts from. */
  static final Field VERSION = whole("version", "the version of the week that the caller saw");

  /** The reason that goes into the history. */
  static final Field WHY = text("why", "the reason, for the history").unneeded();

  static Field text(String name, String words) {
    return new Field(name, "string", Place.BODY, true, words);
  }

  static Field whole(String name, String words) {
    return new Field(name, "integer", Place.BODY, true, words);
  }

  static Field of(String name, String type, String words) {
    return new Field(name, type, Place.BODY, true, words);
  }

  Field unneeded() {
    return new Field(name, type, place, false, words);
  }

  Field inQuery() {
    return new Field(name, type, Place.QUERY, needed, words);
  }
}
