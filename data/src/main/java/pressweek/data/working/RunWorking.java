package pressweek.data.working;

import java.util.List;

/** Works a run out line by line, as a handbook shows an example. */
public final class RunWorking {
  private RunWorking() {}

  /** The working of a run; what cannot be said names the columns that would say it. */
  public static Working of(RunFacts facts) {
    String title =
        "%d good pieces of %s in mold %s on press %s"
            .formatted(
                facts.made().quantity(),
                facts.made().item(),
                facts.mold().id(),
                facts.press().press());
    return new Working(
        title,
        List.of(
            ClampWorking.of(facts),
            ShotWorking.of(facts),
            FitWorking.of(facts),
            CoolingWorking.of(facts),
            CycleWorking.of(facts),
            StopWorking.of(facts),
            QuantityWorking.of(facts),
            PlasticWorking.of(facts),
            PurgeWorking.of(facts),
            DryingWorking.of(facts),
            PreheatWorking.of(facts)));
  }
}
