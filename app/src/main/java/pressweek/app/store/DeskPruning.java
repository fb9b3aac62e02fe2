package pressweek.app.store;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** Forgetting the states of the week that nobody goes back to. */
final class DeskPruning {
  /** What stands on a node of the tree; the parent of the first one is 0. */
  private record Node(long id, long parent) {}

  private DeskPruning() {}

  static int prune(Handle handle, int steps) {
    if (steps < 1) {
      throw new IllegalArgumentException("at least 1 state must be kept but was " + steps);
    }
    // Nobody lays a state on the desk until this is done.
    handle.execute("UPDATE desk SET version = version WHERE id = 1");
    Optional<Long> current =
        handle
            .createQuery("SELECT state FROM desk WHERE state IS NOT NULL")
            .mapTo(Long.class)
            .findOne();
    return current.map(state -> forgetAllBut(handle, near(handle, state, steps))).orElse(0);
  }

  private static Set<Long> near(Handle handle, long current, int steps) {
    Map<Long, Long> parents = new HashMap<>();
    Map<Long, Long> latestChildren = new HashMap<>();
    for (Node node : nodes(handle)) {
      parents.put(node.id(), node.parent());
      latestChildren.merge(node.parent(), node.id(), Math::max);
    }
    Set<Long> near = new HashSet<>();
    follow(parents, current, steps, near);
    follow(latestChildren, current, steps, near);
    near.remove(0L);
    return near;
  }

  private static void follow(Map<Long, Long> ways, long from, int steps, Set<Long> near) {
    long state = from;
    for (int i = 0; i < steps && state != 0; i++) {
      near.add(state);
      state = ways.getOrDefault(state, 0L);
    }
  }

  private static int forgetAllBut(Handle handle, Set<Long> near) {
    List<Long> far =
        nodes(handle).stream().map(Node::id).filter(state -> !near.contains(state)).toList();
    for (long state : far) {
      handle.execute("UPDATE week_state SET parent = NULL WHERE parent = ?", state);
    }
    for (long state : far) {
      handle.execute("DELETE FROM week_state WHERE id = ?", state);
    }
    return far.size();
  }

  private static List<Node> nodes(Handle handle) {
    return handle
        .createQuery("SELECT id, COALESCE(parent, 0) AS parent FROM week_state")
        .map((row, context) -> new Node(row.getLong("id"), row.getLong("parent")))
        .list();
  }
}
