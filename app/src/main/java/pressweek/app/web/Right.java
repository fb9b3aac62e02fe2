package pressweek.app.web;

import io.javalin.security.RouteRole;

/** What a route asks of whoever calls it. */
public enum Right implements RouteRole {
  /** Nothing: what is needed to log in. */
  OPEN,
  /** To be known at all. */
  KNOWN,
  /** To look at the week. */
  WEEK,
  /** To change the week. */
  EDIT,
  /** To look at pulls. */
  PULLS,
  /** To tick pulls off. */
  TICK,
  /** To look at changes and crew. */
  LISTS,
  /** To read item codes. */
  CODES,
  /** To look at figures. */
  FIGURES,
  /** To look at scenarios and what came of the last comparison. */
  SCENARIOS,
  /** To write scenarios and to compare them. */
  COMPARE,
  /** To look at the files and what is wrong with them. */
  FILES,
  /** To put files into the folder. */
  TAKE_FILES,
  /** To say who may use the pages. */
  USERS
}
