package pressweek.data.guide;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds the ways in which a code can be read as one of its families. */
final class FamilyReader {
  /** More readings than these say nothing new: the code is ambiguous. */
  private static final int ENOUGH = 8;

  /** Steps after which dead ends are remembered; most codes need fewer. */
  private static final int MANY_STEPS = 200;

  private final CodeText code;
  private final String separator;
  private final PartReader partReader;
  private final Misses misses;
  private final Map<Part, List<PartMatch>[]> known = new IdentityHashMap<>();
  private final List<PartMatch> stack = new ArrayList<>();
  private final Set<State> dead = new HashSet<>();
  private List<List<PartMatch>> readings = new ArrayList<>();
  private List<List<Part>> blocks = List.of();
  private int steps;

  /**
   * Where the reading stands.
   *
   * @param block the block of parts
   * @param counts how often each of its parts was read, 4 bits a part
   * @param at the next character
   */
  private record State(int block, long counts, int at) {
    int count(int part) {
      return (int) (counts >>> (4 * part)) & 15;
    }

    State with(int part, int next) {
      return new State(block, counts + (1L << (4 * part)), next);
    }
  }

  FamilyReader(String separator, CodeText code, Misses misses) {
    this.code = code;
    this.separator = separator;
    this.misses = misses;
    this.partReader = new PartReader(code, misses);
  }

  /**
   * Every reading (up to a few) of the code as a family with these blocks of parts; what broke off
   * goes to the misses.
   */
  List<List<PartMatch>> read(List<List<Part>> familyBlocks) {
    blocks = familyBlocks;
    readings = new ArrayList<>(1);
    steps = 0;
    dead.clear();
    stack.clear();
    read(new State(0, 0, 0));
    return readings;
  }

  /** Reads on from a state; true when that led to a reading. */
  private boolean read(State state) {
    steps++;
    boolean remember = steps > MANY_STEPS;
    if (readings.size() >= ENOUGH || remember && dead.contains(state)) {
      return false;
    }
    boolean found = state.block() == blocks.size() ? finish(state) : readBlock(state);
    if (remember && !found) {
      dead.add(state);
    }
    return found;
  }

  private boolean finish(State state) {
    if (ended(state.at())) {
      readings.add(List.copyOf(stack));
      return true;
    }
    if (misses.listening()) {
      String seen = code.written().substring(state.at(), partEnd(state.at()));
      misses.add(new Miss(state.at(), state.at(), seen, new Miss.Words("nothing more")));
    }
    return false;
  }

  private boolean readBlock(State state) {
    List<Part> parts = blocks.get(state.block());
    boolean found = false;
    boolean mayLeave = true;
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      boolean lacking = state.count(i) == 0 && !part.optional();
      mayLeave &= !lacking;
      if (state.count(i) < part.repeat()) {
        if (!ended(state.at())) {
          found |= readPart(state, i, part);
        } else if (lacking && misses.listening()) {
          Miss.Words expected = new Miss.Words(part.name() + " " + part.shape());
          misses.add(new Miss(code.length() + 1, code.length(), "", expected));
        }
      }
    }
    if (mayLeave) {
      found |= read(new State(state.block() + 1, 0, state.at()));
    }
    return found;
  }

  private boolean readPart(State state, int index, Part part) {
    boolean found = false;
    for (PartMatch match : matches(part, state.at())) {
      stack.add(match);
      found |= read(state.with(index, match.end() + separator.length()));
      stack.remove(stack.size() - 1);
    }
    return found;
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private List<PartMatch> matches(Part part, int at) {
    List<PartMatch>[] byPlace =
        known.computeIfAbsent(part, p -> (List<PartMatch>[]) new List[code.length() + 1]);
    List<PartMatch> matches = byPlace[at];
    if (matches == null) {
      boolean whole = !separator.isEmpty();
      matches = partReader.read(new PartReader.Sought(part, at, partEnd(at), whole));
      byPlace[at] = matches;
    }
    return matches;
  }

  private int partEnd(int at) {
    int end = separator.isEmpty() ? -1 : code.folded().indexOf(separator, at);
    return end < 0 ? code.length() : end;
  }

  private boolean ended(int at) {
    return separator.isEmpty() ? at >= code.length() : at > code.length();
  }
}
