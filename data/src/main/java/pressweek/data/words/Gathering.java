package pressweek.data.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.words.Case.Said;
import pressweek.data.words.Mention.Turn;

/** Takes what the pieces of a text say into a case: names, threads, lengths. */
final class Gathering {
  private final Offer offer;
  private final PlantThreads threads;
  private final Sizes sizes;
  private final Evidence evidence;
  private final Case item;

  Gathering(Offer offer, PlantThreads threads, Sizes sizes, Evidence evidence, Case item) {
    this.offer = offer;
    this.threads = threads;
    this.sizes = sizes;
    this.evidence = evidence;
    this.item = item;
  }

  /** A length and the mention that says it. */
  private record Told(int mention, Measured number) {}

  void run() {
    Map<String, List<Told>> lengths = new LinkedHashMap<>();
    for (int i = 0; i < evidence.claims().size(); i++) {
      Claim claim = evidence.claims().get(i);
      if (claim instanceof Claim.Says says) {
        for (Map.Entry<String, String> value : says.values().entrySet()) {
          say(i, value.getKey(), value.getValue(), says.code());
        }
      } else if (claim instanceof Claim.Usually usually && !usually.weak()) {
        for (Map.Entry<String, String> value : usually.values().entrySet()) {
          say(i, value.getKey(), value.getValue(), false);
        }
      } else if (claim instanceof Claim.Threaded threaded) {
        thread(i, threaded.cut());
      } else if (claim instanceof Claim.Length length) {
        String attribute = evidence.attribute(i, length.attribute(), offer);
        lengths
            .computeIfAbsent(attribute, a -> new ArrayList<>())
            .add(new Told(i, length.number()));
      } else if (claim instanceof Claim.Count count) {
        item.understand(i, "quantity", count.pieces());
      }
    }
    lengths.forEach(this::lengths);
  }

  private void say(int mention, String name, String value, boolean code) {
    Turn turn = evidence.mentions().get(mention).turn();
    String attribute = evidence.attribute(mention, name, offer);
    item.say(new Said(mention, attribute, value, code, turn));
  }

  private void thread(int mention, Cut cut) {
    String first =
        threads.attributes().stream()
            .filter(
                name -> !offer.isSecond(name) && (!cut.settled() || cut.values().containsKey(name)))
            .findFirst()
            .orElseGet(() -> threads.attributes().stream().findFirst().orElse("thread"));
    String attribute = evidence.attribute(mention, first, offer);
    String value = cut.values().getOrDefault(attribute, "");
    if (!value.isEmpty()) {
      say(mention, first, value, false);
      if (!cut.assumption().isEmpty()) {
        item.assume(Map.of(attribute, value), cut.assumption());
      }
      return;
    }
    item.understand(mention, attribute, cut.name());
    if (cut.settled() || !cut.made()) {
      String nearest =
          cut.choices().isEmpty() ? "" : "; nearest: " + String.join(", ", cut.choices());
      item.conflict(Labels.of(attribute) + " " + cut.name() + " is not made" + nearest);
    }
    item.leaveOpen(attribute, cut.made() ? cut.choices() : List.of());
  }

  private void lengths(String attribute, List<Told> told) {
    for (Told one : told) {
      Sizes.Fit fit = sizes.fit(attribute, one.number(), item.known());
      if (evidence.mentions().get(one.mention()).turn() == Turn.NOT) {
        item.say(new Said(one.mention(), attribute, fit.value(), false, Turn.NOT));
      } else if (fit.found()) {
        say(one.mention(), bare(attribute), fit.value(), false);
        if (!fit.assumption().isEmpty()) {
          item.assume(
              Map.of(attribute, fit.value()), Labels.of(attribute) + " " + fit.assumption());
        }
      } else {
        notMade(attribute, one, fit);
      }
    }
  }

  private String bare(String attribute) {
    return offer.isSecond(attribute) ? attribute.substring(Offer.SECOND.length()) : attribute;
  }

  private void notMade(String attribute, Told told, Sizes.Fit fit) {
    String unit =
        switch (told.number().unit()) {
          case MM -> " mm";
          case INCH, IN -> " in";
          case NONE -> "";
        };
    item.understand(told.mention(), attribute, told.number().text() + unit);
    StringBuilder sentence =
        new StringBuilder(Labels.of(attribute) + " " + told.number().text() + unit);
    sentence.append(" is not made");
    item.known().entrySet().stream()
        .filter(said -> offer.inOneTable(attribute, said.getKey()))
        .findFirst()
        .ifPresent(said -> sentence.append(" for ").append(said.getValue()));
    if (!fit.nearest().isEmpty()) {
      sentence.append("; nearest: ").append(Labels.values(attribute, fit.nearest()));
    }
    item.conflict(sentence.toString());
    item.leaveOpen(attribute, List.of());
  }
}
