package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.FamilyRow;
import pressweek.data.problem.Item;
import pressweek.data.problem.Mold;
import pressweek.data.thread.Threads;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/** Finds the molds that can make an item. */
final class MoldFinder {
  private static final int SHOWN = 4;
  private static final String CURE =
      "add the head, hub, kind or thread to a mold in molds.csv, or name a mold in the order line";

  private final Map<String, Mold> byId = new LinkedHashMap<>();
  private final Map<String, List<Mold>> byMakes = new HashMap<>();
  private final ItemReader items;

  /** Molds, what family molds make, and how item codes are looked up. */
  MoldFinder(List<Mold> molds, List<FamilyRow> family, ItemReader items) {
    for (Mold mold : molds) {
      byId.put(mold.id(), mold);
      for (String makes : mold.use().makes()) {
        byMakes.computeIfAbsent(items.key(makes), k -> new ArrayList<>()).add(mold);
      }
    }
    for (FamilyRow row : family) {
      Mold mold = byId.get(row.mold());
      List<Mold> makers = byMakes.computeIfAbsent(items.key(row.item()), k -> new ArrayList<>());
      if (mold != null && !makers.contains(mold)) {
        makers.add(mold);
      }
    }
    this.items = items;
  }

  /** The mold of this id. */
  Optional<Mold> byId(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * The molds that can make an item: the one it names, else every one that makes its head or its
   * code and takes its inserts.
   */
  Attempt<List<Mold>> find(ReadItem item) {
    String named = item.value(Item.MOLD);
    if (!named.isEmpty()) {
      Mold mold = byId.get(named);
      return mold == null
          ? new Stopped<>(
              Notes.unknown("mold", named, "molds.csv", byId.keySet()),
              "correct the mold in the order line, or add it to molds.csv",
              "mold")
          : new Done<>(List.of(mold));
    }
    Set<Mold> makers = new LinkedHashSet<>();
    makers.addAll(byMakes.getOrDefault(items.key(item.value(Item.HEAD)), List.of()));
    makers.addAll(byMakes.getOrDefault(items.key(item.item().code()), List.of()));
    List<Mold> fitting = makers.stream().filter(mold -> objection(mold, item).isEmpty()).toList();
    return fitting.isEmpty() ? none(item, List.copyOf(makers)) : new Done<>(fitting);
  }

  private Attempt<List<Mold>> none(ReadItem item, List<Mold> makers) {
    String head = item.value(Item.HEAD);
    String what = head.isEmpty() ? "item " + item.item().code() : "head " + head;
    if (makers.isEmpty()) {
      return new Stopped<>("no mold makes " + what, CURE, head.isEmpty() ? "item" : "");
    }
    List<String> objections =
        makers.stream()
            .map(mold -> mold.id() + " " + objection(mold, item).orElse("fits"))
            .toList();
    return new Stopped<>("no mold of " + what + " fits: " + Words.few(objections, SHOWN), CURE);
  }

  /** Why a mold of the right head cannot make the item; empty when it can. */
  private static Optional<String> objection(Mold mold, ReadItem item) {
    String hub = item.value(Item.HUB);
    Optional<String> moldHub = mold.use().hub().map(h -> h.name().toLowerCase(Locale.ROOT));
    if (moldHub.isPresent() && !hub.isEmpty() && !moldHub.get().equalsIgnoreCase(hub)) {
      return Optional.of("has a " + moldHub.get() + " hub, not " + hub);
    }
    for (InsertNeed need : item.inserts()) {
      String kind = need.fit().kind();
      List<String> kinds = mold.use().insertKinds();
      if (!kind.isEmpty() && !kinds.isEmpty() && kinds.stream().noneMatch(kind::equalsIgnoreCase)) {
        return Optional.of("takes " + String.join("|", kinds) + ", not " + kind);
      }
      String thread = need.fit().thread();
      List<String> threads = mold.use().threads();
      if (!thread.isEmpty()
          && !threads.isEmpty()
          && threads.stream().noneMatch(t -> Threads.same(t, thread))) {
        return Optional.of("takes " + String.join("|", threads) + ", not " + thread);
      }
    }
    return Optional.empty();
  }

  /** The tooling set that a mold needs for an item; empty for none. */
  static String tooling(Mold mold, ReadItem item) {
    for (InsertNeed need : item.inserts()) {
      for (Map.Entry<String, String> set : mold.use().toolingByThread().entrySet()) {
        if (Threads.same(set.getKey(), need.fit().thread())) {
          return set.getValue();
        }
      }
    }
    return "";
  }
}
