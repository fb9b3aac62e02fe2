package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.offer.Answered;
import pressweek.app.offer.AskedItem;
import pressweek.app.offer.Inquiring;
import pressweek.app.offer.Inquiry;
import pressweek.app.offer.OfferJson;
import pressweek.app.offer.OfferText;
import pressweek.app.plan.ChangedInputs;
import pressweek.data.declared.KnownNeeds;
import pressweek.data.files.AtomicFile;
import pressweek.data.files.Folder;
import pressweek.data.files.InputError;
import pressweek.data.files.When;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Hours;
import pressweek.data.week.Week;
import pressweek.solver.StopSign;

/** {@code pressweek promise}: what can be promised to a customer who is on the phone. */
@Command(
    name = "promise",
    description = {
      "Says when an item could be there with nobody made late, and what it would cost to have it by a date: which lines would be late for it and by how much, and what each rule charges. Each answer comes from the plan carried out with the new line in it, and audited; nothing is ordered, and no plan is changed.",
      "Ctrl-C ends the search and prints what has been found by then.",
      "For example: pressweek promise FOLDER \"2 in lobe knob, M8, black\" 200,500 --need 2026-12-03 --plan out/plan.json"
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:every quantity can be there in time with nobody made late",
      "1:answered, and one of them cannot",
      "2:bad input or arguments, or words that can mean more than one item"
    })
final class PromiseCommand implements Callable<Integer> {
  private static final long NANOS = 1_000_000_000L;

  private static final Settings NO_LIMITS = new Settings(0, 0, 0);
  private static final When NO_DAY = new When.Day(LocalDate.EPOCH);

  @Spec private CommandSpec spec;
  @Mixin private FolderArgument folder;
  @Mixin private SearchLimits limits;
  @Mixin private StandingPlan base;

  @Parameters(
      index = "1",
      paramLabel = "ITEM-OR-WORDS",
      description = "item code, or the customer's words in quotes")
  private String item;

  @Parameters(
      index = "2",
      paramLabel = "QTY[,QTY...]",
      description = "pieces; several quantities are answered one by one")
  private String quantities;

  @Option(
      names = "--need",
      paramLabel = "DATE",
      required = true,
      description =
          "when it should be there, as 2026-12-03 (that day's shipping cut-off) or 2026-12-03T12:00")
  private String need;

  @Option(
      names = "--needs",
      paramLabel = "NEED[,NEED...]",
      split = ",",
      description = "what it demands of its material, such as food or rohs")
  private List<String> needs = List.of();

  @Option(
      names = "--json",
      paramLabel = "FILE",
      defaultValue = "",
      description = "write the answer there as well, as JSON")
  private String json = "";

  @Override
  public Integer call() throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    BadArguments bad = new BadArguments();
    Settings settings = bad.or(NO_LIMITS, () -> limits.settings(spec));
    List<Integer> pieces = bad.or(List.of(), () -> Quantities.of(spec.commandLine(), quantities));
    When when = bad.or(NO_DAY, () -> Moments.when(spec.commandLine(), "--need", need));
    if (item.isBlank()) {
      bad.add("an item is missing; expected its code, or the customer's words");
    }
    bad.check(spec.commandLine());
    Optional<Folder> read = folder.read(err);
    if (read.isEmpty() || hasErrors(read.get(), err)) {
      return ExitCode.BAD_INPUT;
    }
    List<String> known = needs(read.get());
    Optional<String> code = code(read.get(), pieces);
    if (code.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    return answer(read.get(), new Inquiry(code.get(), pieces, when, known), settings);
  }

  /** The needs as orders.csv has them; one that nothing could be declared for is a bad argument. */
  private List<String> needs(Folder read) {
    KnownNeeds known = KnownNeeds.of(read);
    BadArguments bad = new BadArguments();
    needs.forEach(need -> known.fault(need).ifPresent(fault -> bad.add("--needs " + fault)));
    bad.check(spec.commandLine());
    return needs.stream().map(need -> need.strip().toLowerCase(Locale.ROOT)).distinct().toList();
  }

  private static boolean hasErrors(Folder read, PrintWriter err) {
    List<InputError> errors = Week.build(read, Moments.present()).errors();
    errors.forEach(err::println);
    if (!errors.isEmpty()) {
      err.println("no promise: " + Counts.of(errors.size(), "error") + " in the plant's files");
    }
    return !errors.isEmpty();
  }

  /** The item's code; empty, and said, when it is not certain which item is meant. */
  private Optional<String> code(Folder read, List<Integer> pieces) {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    AskedItem asked = AskedItem.of(read, item.strip(), pieces);
    if (asked instanceof AskedItem.Known known) {
      known.read().ifPresent(reading -> WordsPrinter.print(item, reading, out));
      return Optional.of(known.code());
    }
    if (asked instanceof AskedItem.Open open) {
      WordsPrinter.print(open.answer(), out);
      out.flush();
      err.println(
          "no promise: the words do not say one item: " + open.why() + "; ask the customer first");
      return Optional.empty();
    }
    AskedItem.NoCode none = (AskedItem.NoCode) asked;
    new CodePrinter(out).print(none.explained());
    out.flush();
    err.println(
        "no promise: item \"" + item + "\" is not known; expected a code of the guide, or words");
    return Optional.empty();
  }

  /** Answers; Ctrl-C ends the search, and what has been found by then is printed. */
  private int answer(Folder read, Inquiry inquiry, Settings settings) throws IOException {
    StopSign stop = new StopSign();
    Interrupt interrupt = new Interrupt(stop::give);
    Runtime.getRuntime().addShutdownHook(interrupt);
    int code = ExitCode.BUG;
    try {
      code = answer(read, inquiry, settings, stop);
    } catch (ParameterException e) {
      code = ExitCode.BAD_INPUT;
      throw e;
    } finally {
      interrupt.finished(code);
    }
    return code;
  }

  private int answer(Folder read, Inquiry inquiry, Settings settings, StopSign stop)
      throws IOException {
    long begun = System.nanoTime();
    PrintWriter err = spec.commandLine().getErr();
    Optional<StandingPlan.Standing> standing = base.of(spec, read, settings, stop);
    if (standing.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Plan plan = standing.get().plan();
    List<String> changed = ChangedInputs.of(plan.head().inputs(), read.inputs());
    if (!changed.isEmpty()) {
      err.println(
          "note: plan %s was made from other inputs; changed since: %s"
              .formatted(plan.head().number(), String.join(", ", changed)));
    }
    Inquiring inquiring = new Inquiring(read, plan, standing.get().nowMin());
    checkNeed(inquiring.needMin(inquiry), plan, standing.get().nowMin());
    int count = inquiry.quantities().size();
    err.println(
        "looking for "
            + Counts.of(count, "answer")
            + "; Ctrl-C prints what has been found by then");
    Answered answered =
        inquiring
            .answer(inquiry, standing.get().left(), stop)
            .within((int) ((System.nanoTime() - begun) / NANOS));
    answered.notes().forEach(note -> err.println("note: " + note));
    PrintWriter out = spec.commandLine().getOut();
    out.print(OfferText.of(answered));
    out.flush();
    if (!json.isEmpty()) {
      AtomicFile.write(Path.of(json), OfferJson.of(answered).getBytes(StandardCharsets.UTF_8));
    }
    if (!answered.isSound()) {
      return ExitCode.BUG;
    }
    return answered.allInTime() ? ExitCode.DONE : ExitCode.UNPLACED;
  }

  private void checkNeed(int needMin, Plan plan, int nowMin) {
    Hours hours = plan.problem().plant().hours();
    if (needMin <= nowMin) {
      throw new ParameterException(
          spec.commandLine(),
          "--need %s is past: the plan is seen from %s; expected a later date"
              .formatted(need, Moments.text(nowMin, hours.zone())));
    }
  }
}
