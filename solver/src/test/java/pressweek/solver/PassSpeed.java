package pressweek.solver;

import pressweek.solver.timing.*;

public class PassSpeed {
  public static void main(String[] a) {
    int jobs = Integer.parseInt(a[0]), presses = Integer.parseInt(a[1]);
    WeekTables week = new WeekTables(RandomPlant.of(1, jobs, presses).build());
    long t0 = System.nanoTime();
    Sequences s = new Dispatch(week).atcs(1, 0.3);
    System.out.println("dispatch ms " + (System.nanoTime() - t0) / 1e6);
    t0 = System.nanoTime();
    s = new Dispatch(week).earliestDueDate();
    System.out.println("edd ms " + (System.nanoTime() - t0) / 1e6);
    TimingPass pass = TimingPass.full(week);
    int reps = 2000000 / jobs;
    for (int w = 0; w < 4; w++) {
      long t = System.nanoTime();
      long x = 0;
      for (int i = 0; i < reps; i++) x += pass.run(s);
      System.out.println((System.nanoTime() - t) / 1e3 / reps + " us a pass " + x % 7);
    }
  }
}
