package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.plan.Charge;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.solver.timing.Recorder.Event;

/** Writes what a plan decides for the plant as a whole. */
final class WholeWriter {
  private final WeekTables week;
  private final Sequences sequences;
  private final List<PlantWide.Opened> opened = new ArrayList<>();
  private final List<PlantWide.DryerUse> dryings = new ArrayList<>();
  private final List<Charge> charges = new ArrayList<>();

  private WholeWriter(WeekTables week, Sequences sequences) {
    this.week = week;
    this.sequences = sequences;
  }

  static PlantWide of(WeekTables week, Sequences sequences, List<Event> events, List<Run> runs) {
    WholeWriter writer = new WholeWriter(week, sequences);
    writer.overtime();
    writer.dryings(events);
    writer.campaigns(events);
    writer.close(runs);
    return new PlantWide(
        writer.opened, writer.held(), writer.dryings, writer.charges, Optional.empty());
  }

  private List<PlantWide.Held> held() {
    List<PlantWide.Held> held = new ArrayList<>();
    for (int job = 0; job < week.jobCount(); job++) {
      if (sequences.behind[job] >= 0) {
        held.add(
            new PlantWide.Held(
                week.jobs.jobs.get(job).id(), week.jobs.jobs.get(sequences.behind[job]).id()));
      }
    }
    return held;
  }

  private void overtime() {
    for (int i = 0; i < week.shifts.overtime().size(); i++) {
      if ((sequences.open >> i & 1) != 0) {
        ShiftTimes.Worked window = week.shifts.overtime().get(i);
        String shift = window.shift().name();
        opened.add(new PlantWide.Opened(shift, window.from(), window.to()));
        add(
            Rule.OVERTIME,
            week.overtimeCharge(window),
            shift + " opened, " + (window.to() - window.from()) + " min");
      }
    }
  }

  private void dryings(List<Event> events) {
    List<Recorder.Started> dried = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof Recorder.Started started && started.dried().dryer() >= 0) {
        dried.add(started);
      }
    }
    dried.sort(
        Comparator.<Recorder.Started>comparingInt(started -> started.times().runStart())
            .thenComparing(started -> RunWriter.id(started.job())));
    for (Recorder.Started started : dried) {
      dryings.add(
          new PlantWide.DryerUse(
              RunWriter.id(started.job()),
              week.problem.arranged().drying().dryers().get(started.dried().dryer()).dryer(),
              week.dryers().content(week.jobs.material[started.job()]),
              started.dried().from(),
              started.times().runEnd()));
    }
  }

  private void campaigns(List<Event> events) {
    List<Recorder.ShortCampaign> shorts = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof Recorder.ShortCampaign campaign) {
        shorts.add(campaign);
      }
    }
    shorts.sort(Comparator.comparingInt(Recorder.ShortCampaign::press));
    Campaigns campaigns = new Campaigns(week.problem.arranged().terms(), week.presses);
    for (Recorder.ShortCampaign campaign : shorts) {
      String words =
          String.format(
              Locale.ROOT,
              "%s on %s: %d min, %d min short",
              week.names.molds().get(campaign.mold()),
              week.problem.floor().presses().get(campaign.press()).id(),
              campaign.minutes(),
              campaign.missing());
      add(Rule.SHORT_CAMPAIGN, campaigns.charge(campaign.missing()), words);
    }
  }

  private void close(List<Run> runs) {
    int last = runs.stream().mapToInt(Run::endMin).max().orElse(week.start);
    add(Rule.CLOSE, week.charges.close(last), (last - week.start) + " min to the last end");
  }

  private void add(Rule rule, long amount, String because) {
    if (amount != 0) {
      charges.add(new Charge(rule, amount, because));
    }
  }
}
