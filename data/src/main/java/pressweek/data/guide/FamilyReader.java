package pressweek.data.guide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds the ways in which a code can be read as one of a family. */
final class FamilyReader {
  /** More readings than these say nothing new: the code is ambiguous. */
  private static final int ENOUGH = 8;

  private final String code;
  private final String separator;
  private final PartReader partReader;
  private final Misses misses;
  private final List<List<Part>> blocks;
  private final Set<State> dead = new HashSet<>();
  private final List<List<Placed>> readings = new ArrayList<>();

  /** A part as read, with its place in the code from 1. */
  record Placed(int place, PartMatch match) {}

  /**
   * Where the reading stands: the block of parts, the parts of it that have been read, and the next
   * character.
   */
  private record State(int block, BitSet used, int at) {}

  private FamilyReader(Guide guide, Family family, String code, Misses misses) {
    this.code = code;
    this.separator = guide.separator();
    this.misses = misses;
    this.partReader = new PartReader(code, guide.ignoreCase(), misses);
    this.blocks = blocks(family.parts());
  }

  /**
   * Every reading (up to a few) of a code as one of the family; what broke off goes to {@code
   * misses}.
   */
  static List<List<Placed>> read(Guide guide, Family family, String code, Misses misses) {
    FamilyReader reader = new FamilyReader(guide, family, code, misses);
    reader.read(new State(0, new BitSet(), 0), List.of());
    return reader.readings;
  }

  /** Neighbours that may change places form one block, every other part a block of its own. */
  private static List<List<Part>> blocks(List<Part> parts) {
    List<List<Part>> blocks = new ArrayList<>();
    boolean open = false;
    for (Part part : parts) {
      if (!(open && part.anyOrder())) {
        blocks.add(new ArrayList<>());
      }
      blocks.get(blocks.size() - 1).add(part);
      open = part.anyOrder();
    }
    return blocks;
  }

  /** Reads on from a state; true when that led to a reading. */
  private boolean read(State state, List<Placed> soFar) {
    if (dead.contains(state) || readings.size() >= ENOUGH) {
      return false;
    }
    boolean found;
    if (state.block() == blocks.size()) {
      found = finish(state, soFar);
    } else {
      found = readBlock(state, soFar);
    }
    if (!found) {
      dead.add(state);
    }
    return found;
  }

  private boolean finish(State state, List<Placed> soFar) {
    if (ended(state.at())) {
      readings.add(soFar);
      return true;
    }
    int end = partEnd(state.at());
    String seen = code.substring(state.at(), end);
    misses.add(new Miss(state.at(), state.at(), seen, new Miss.Words("nothing more")));
    return false;
  }

  private boolean readBlock(State state, List<Placed> soFar) {
    List<Part> parts = blocks.get(state.block());
    boolean found = false;
    boolean mayLeave = true;
    for (int i = 0; i < parts.size(); i++) {
      if (!state.used().get(i)) {
        Part part = parts.get(i);
        mayLeave &= part.optional();
        if (!ended(state.at())) {
          found |= readPart(state, i, soFar);
        } else if (!part.optional()) {
          Miss.Words expected = new Miss.Words(part.name() + " " + part.shape());
          misses.add(new Miss(code.length() + 1, code.length(), "", expected));
        }
      }
    }
    if (mayLeave) {
      found |= read(new State(state.block() + 1, new BitSet(), state.at()), soFar);
    }
    return found;
  }

  private boolean readPart(State state, int index, List<Placed> soFar) {
    Part part = blocks.get(state.block()).get(index);
    boolean found = false;
    boolean whole = !separator.isEmpty();
    for (PartMatch match : partReader.read(part, state.at(), partEnd(state.at()), whole)) {
      BitSet used = (BitSet) state.used().clone();
      used.set(index);
      List<Placed> further = new ArrayList<>(soFar);
      further.add(new Placed(soFar.size() + 1, match));
      found |= read(new State(state.block(), used, match.end() + separator.length()), further);
    }
    return found;
  }

  private int partEnd(int at) {
    int end = separator.isEmpty() ? -1 : code.indexOf(separator, at);
    return end < 0 ? code.length() : end;
  }

  private boolean ended(int at) {
    return separator.isEmpty() ? at >= code.length() : at > code.length();
  }
}
