package pressweek.app.store;

/** Why the store could not do what it was asked: what was seen, and what a person can do. */
public final class StoreTrouble extends Exception {
  private static final long serialVersionUID = 1L;

  /** What sort of trouble it is. */
  public enum Kind {
    /** Bytes of the store are not what they were. */
    DAMAGED,
    /** The file or database holds something else. */
    NOT_A_STORE,
    /** A newer Pressweek has written it. */
    NEWER,
    /** The disk is full. */
    FULL,
    /** Somebody else keeps it locked. */
    LOCKED,
    /** It is not there or does not answer. */
    UNREACHABLE,
    /** We may not read or write it. */
    REFUSED,
    /** It was asked for something that it cannot do, such as to overwrite a back-up. */
    NOT_DONE
  }

  private final Kind kind;
  private final String seen;
  private final String cure;

  StoreTrouble(Kind kind, String seen, String cure) {
    super(seen + ". " + cure + ".");
    this.kind = kind;
    this.seen = seen;
    this.cure = cure;
  }

  StoreTrouble(Kind kind, String seen, String cure, Throwable cause) {
    this(kind, seen, cure);
    initCause(cause);
  }

  /** What sort of trouble it is. */
  public Kind kind() {
    return kind;
  }

  /** What we saw, without a full stop. */
  public String seen() {
    return seen;
  }

  /** What a person can do, without a full stop. */
  public String cure() {
    return cure;
  }
}
