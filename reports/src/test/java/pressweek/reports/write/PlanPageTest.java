package pressweek.reports.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Materials;
import pressweek.data.problem.NotChecked;
import pressweek.data.problem.Person;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Unplaced;
import pressweek.reports.sample.Hostile;
import pressweek.reports.sample.SamplePlan;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.Shifts;
import pressweek.reports.sample.SmallPlan;

class PlanPageTest {
  private static final String MONDAY = "2026-11-30T";

  private static SmallPlan small() {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "10:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "13:00")
            .pull("R1", "V1", MONDAY + "07:30", "S5616")
            .pull("R1", "V1", MONDAY + "07:30", "S0825");
    plan.replaces = "2026-W49/2";
    plan.costs = Map.of(Rule.LATE, 50_000_000L);
    plan.references.add(new Reference("earliest-due-date order", 100_000_000L, 3, 90));
    plan.notChecked.add(new NotChecked("Drying", "resins.csv dry_h", 12));
    plan.notChecked.add(new NotChecked("Tie bars", "presses.csv tie_bar_x_mm", 38));
    plan.unplaced.add(new Unplaced("4712", "1", "LV90/X", 10, "no mold makes it", "add one"));
    return plan;
  }

  private static String page(Plan plan) {
    return PlanPage.html(plan, List.of());
  }

  private static Document parse(String page)
      throws ParserConfigurationException, IOException, SAXException {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(page)));
  }

  private static List<Element> elements(Document page) {
    NodeList all = page.getElementsByTagName("*");
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      elements.add((Element) all.item(i));
    }
    return elements;
  }

  @Test
  void partsComeInTheOrderInWhichTheyAreRead() {
    String page = page(small().plan());
    List<String> order =
        List.of(
            "<h1>Quillback Grips</h1>",
            "Plan 2026-W49/3, replaces 2026-W49/2, made Mon 30 Nov 05:40",
            "50 % below earliest-due-date order. How far from the best possible: cannot tell.</p>",
            ">Not checked this week</h2>",
            ">Late lines</h2>",
            ">Week wall</h2>",
            ">Schedule by press</h2>",
            ">Pull list</h2>",
            ">Changes</h2>",
            ">Unplaced lines</h2>",
            ">Cautions</h2>");
    int at = 0;
    for (String part : order) {
      assertThat(page.indexOf(part, at)).as(part).isPositive();
      at = page.indexOf(part, at);
    }
  }

  @Test
  void nothingIsFetchedAndThePolicySaysSo() {
    String page = page(SamplePlan.of(14, 60));
    assertThat(page)
        .contains("content=\"default-src &#39;none&#39;; style-src &#39;sha256-")
        .doesNotContain("http:")
        .doesNotContain("https:")
        .doesNotContain("src=")
        .doesNotContain("@import")
        .doesNotContain(" style=");
  }

  @Test
  void everyLinkLeadsSomewhereAndNoIdIsUsedTwice() throws Exception {
    Set<String> ids = new TreeSet<>();
    Set<String> links = new TreeSet<>();
    for (Element element : elements(parse(page(SamplePlan.of(14, 60))))) {
      if (element.hasAttribute("id")) {
        assertThat(ids.add(element.getAttribute("id"))).as(element.getAttribute("id")).isTrue();
      }
      if (element.hasAttribute("href")) {
        links.add(element.getAttribute("href").substring(1));
      }
    }
    assertThat(ids).containsAll(links).contains("run-R001", "run-R060");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"><img src=x onerror=alert(1)>",
        "'><script>alert(1)<",
        "]]><!--",
        "&lt;b&gt;&amp;",
        "\u0000\u001B\u202E javascript:alert(1) "
      })
  void hostileTextInEveryFieldStaysText(String hostile) throws Exception {
    Plan plan = Hostile.of(SamplePlan.of(6, 30), hostile);
    Document page = parse(PlanPage.html(plan, List.of(hostile + "finding")));
    Set<String> benign = new TreeSet<>();
    for (Element e : elements(parse(page(SamplePlan.of(6, 30))))) {
      benign.add(e.getTagName());
    }
    for (Element element : elements(page)) {
      assertThat(benign).contains(element.getTagName());
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        assertThat(element.getAttributes().item(i).getNodeName()).doesNotStartWith("on");
      }
      String href = element.getAttribute("href");
      assertThat(href.isEmpty() || href.matches("#[A-Za-z0-9-]+")).as(href).isTrue();
    }
    String shown = hostile.replaceAll("[\u0000\u001B]", "\uFFFD");
    assertThat(page.getDocumentElement().getTextContent()).contains(shown + "Quillback Grips");
  }

  @Test
  void pullRowSaysWhatToBring() {
    assertThat(page(small().plan()))
        .contains(
            "<td class=\"key\" data-name=\"insert\">S0825</td>"
                + "<td data-name=\"what it is\">stud, <b>M8x1.25</b>, 25 mm, steel, zinc"
                + " trivalent</td>"
                + "<td data-name=\"bin\">C1-2</td><td data-name=\"lot\">L1</td>"
                + "<td data-name=\"pieces\"><div>540</div></td>"
                + "<td data-name=\"for line\">4711/1</td><td data-name=\"run\">R1</td>"
                + "<td data-name=\"caution\"><div>do not mix with S5616 (5/16-18 UNC instead of"
                + " M8x1.25, diameters 0.8 % apart): go/no-go thread gauge M8x1.25 passes one, not"
                + " the other</div></td>")
        .contains("<th class=\"group\" scope=\"rowgroup\" colspan=\"11\">Mon 30 Nov, early</th>");
  }

  @Test
  void lateLineSaysWhy() {
    assertThat(page(small().plan()))
        .contains("<a href=\"#run-R1\">4711/1</a>")
        .contains(
            "<td class=\"figure\" data-name=\"late\">3 h</td><td data-name=\"press\">V1</td>"
                + "<td data-name=\"why\">runs from Mon 08:00 to Mon 13:00.</td>");
  }

  @Test
  void whatWouldAddMostIsWhatTouchesMost() {
    assertThat(page(small().plan()))
        .contains("What would add most: presses.csv tie_bar_x_mm.")
        .contains("Drying <span class=\"muted\">(add resins.csv dry_h, touches 12 lines)</span>");
  }

  @Test
  void brokenPlanIsNeverShownAsGood() {
    String page = PlanPage.html(small().plan(), List.of("PRESS_ONCE: V1 runs R1 and R2 at once"));
    assertThat(page)
        .contains("<title>Breaks hard rules: Plan 2026-W49/3")
        .contains("<h2>This plan breaks hard rules. Do not run it.</h2>")
        .contains("<li>PRESS_ONCE: V1 runs R1 and R2 at once</li>")
        .contains("<strong>Plan 2026-W49/3 \u2014 BREAKS HARD RULES, do not run</strong>")
        .doesNotContain("below earliest-due-date order")
        .doesNotContain("What it costs");
    assertThat(page.indexOf("Do not run it")).isLessThan(page.indexOf("class=\"lead\""));
  }

  @Test
  void everySheetBearsThePlanNumberOnPaper() {
    String page = page(small().plan());
    int sheets = page.split("<section class=\"sheet\"", -1).length - 1;
    String head =
        "<strong>Plan 2026-W49/3</strong><span>replaces 2026-W49/2</span>"
            + "<span>Quillback Grips</span><span>made Mon 30 Nov 05:40</span>"
            + "<span class=\"printed\">";
    assertThat(page.split(Pattern.quote(head), -1)).hasSize(sheets + 1);
    assertThat(sheets).isEqualTo(12);
  }

  @Test
  void moneyIsHiddenWithoutRates() {
    SmallPlan plan = small();
    plan.money = false;
    String page = page(plan.plan());
    assertThat(page).doesNotContain("EUR").doesNotContain("avoidable cost");
    assertThat(page).contains("By the default weights the plan is 50 % below");
    assertThat(page(small().plan())).contains("avoidable cost, EUR").contains("EUR 500.00");
  }

  @Test
  void crewSheetNamesPeopleOnceAndWhereNobodyMayRun() {
    SmallPlan plan = small();
    assertThat(page(plan.plan())).doesNotContain("who may run what</th>");
    plan.presses = SampleWeek.presses(9).stream().filter(p -> !p.id().matches("V[3-8]")).toList();
    plan.job("4713", "H9", MONDAY + "10:00")
        .run("R2", "4713", "H9", MONDAY + "08:00", MONDAY + "13:00");
    plan.plant =
        Shifts.people(
            new Person("E-07 Ada", Person.Role.OPERATOR, List.of("early"), List.of("V1")));
    String page = page(plan.plan());
    assertThat(page).contains("who may run what</th>").contains("<div>E-07 Ada: all</div>");
    // of the whole plant, then of the cell
    assertThat(page.split(Pattern.quote("<div>nobody: H9</div>"), -1)).hasSize(3);
    assertThat(page.split("E-07 Ada", -1)).hasSize(2);
  }

  @Test
  void uncheckedStockIsSaidOnThePullList() {
    SmallPlan plan = small();
    plan.materials =
        new Materials(
            plan.materials.resins(),
            plan.materials.colours(),
            plan.materials.inserts(),
            new Stock(false, List.of(), List.of()));
    assertThat(page(plan.plan())).contains("Insert stock was not checked");
    assertThat(page(small().plan())).doesNotContain("Insert stock was not checked");
  }

  @Test
  void emptyPlanIsAPage() throws Exception {
    String page = page(SamplePlan.empty());
    assertThat(parse(page).getDocumentElement().getTagName()).isEqualTo("html");
    assertThat(page)
        .contains("There is no order line to plan.")
        .contains("No planned line is late.")
        .contains("Without a run: V1, V2.")
        .contains("There are no inserts to bring.")
        .contains("Every line is in the plan.");
  }

  @Test
  void policyNamesTheStyleAndTheScriptOfThePage() throws Exception {
    String page = page(SamplePlan.empty());
    Matcher style = Pattern.compile("(?s)<style>(.*)</style>").matcher(page);
    assertThat(style.find()).isTrue();
    byte[] digest =
        MessageDigest.getInstance("SHA-256")
            .digest(style.group(1).getBytes(StandardCharsets.UTF_8));
    assertThat(page).contains("sha256-" + Base64.getEncoder().encodeToString(digest));
  }
}
