package pressweek.app.web.browser;

/** The pages, what each one's heading says of a plant with a plan, and what stands on it. */
enum Page {
  WALL("/", "Week wall", ".wall [data-line]"),
  PULLS("/pulls", "to bring, the next to", "li.pull"),
  CHANGES("/changes", "Next change:", "li.change"),
  CREW("/crew", "The crew is large enough", "section.crew tbody tr"),
  CODES("/codes", "What does this code mean", "form.question input"),
  FIGURES("/figures", "The week in figures", "table.plans tbody tr"),
  SCENARIOS("/scenarios", "What if?", "table.shelf tbody tr"),
  FILES("/files", "Files of plant", "table.folder tbody tr"),
  HISTORY("/history", "Who changed what", "table tbody tr"),
  USERS("/users", "Who may do what", "form fieldset"),
  LOGIN("/login", "Pressweek", "form input[type=password]");

  final String path;
  final String heading;
  final String content;

  Page(String path, String heading, String content) {
    this.path = path;
    this.heading = heading;
    this.content = content;
  }

  /** Opens the page and waits until what it is for stands on it. */
  void openIn(Browser browser) {
    browser.open(path);
    browser.present("main " + content);
  }
}
