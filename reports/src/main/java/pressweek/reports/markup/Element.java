package pressweek.reports.markup;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * An element of a page (HTML) or a picture (SVG). Text and attribute values are escaped here, so
 * that no other place has to remember it; names of elements and attributes are the program's own.
 * What comes out is well-formed XML, too.
 */
public final class Element {
  private static final Set<String> VOID = Set.of("br", "col", "hr", "meta");

  private final String name;
  private final StringBuilder attributes = new StringBuilder();

  /**
   * Finished pieces of text; a child's are taken over as they are, so that none is copied twice.
   */
  private final List<String> body = new ArrayList<>();

  private Element(String name) {
    this.name = name;
  }

  /** An empty element. */
  public static Element of(String name) {
    return new Element(name);
  }

  /** An element with a class, or several separated by spaces; without one when it is empty. */
  public static Element of(String name, String cssClass) {
    Element element = new Element(name);
    return cssClass.isEmpty() ? element : element.attr("class", cssClass);
  }

  /** A style or script element, whose content is the program's own and is not escaped. */
  public static Element verbatim(String name, String content) {
    if (content.contains("</")) {
      throw new IllegalArgumentException("content would end the " + name + " element");
    }
    Element element = new Element(name);
    element.body.add(content);
    return element;
  }

  /** Sets an attribute. */
  public Element attr(String attribute, String value) {
    attributes.append(' ').append(attribute).append("=\"").append(Escape.text(value)).append('"');
    return this;
  }

  /** Sets an attribute that is a length or a place in pixels, with one decimal. */
  public Element attr(String attribute, double pixels) {
    return attr(attribute, Pixels.text(pixels));
  }

  /** Adds text. */
  public Element text(String text) {
    body.add(Escape.text(text));
    return this;
  }

  /** Adds a child. */
  public Element add(Element child) {
    child.render(body);
    return this;
  }

  /** Adds children in their order. */
  public Element addAll(List<Element> children) {
    children.forEach(this::add);
    return this;
  }

  /** Adds a child with nothing but text. */
  public Element add(String childName, String text) {
    return add(of(childName).text(text));
  }

  private void render(List<String> out) {
    out.add("<" + name + attributes);
    if (VOID.contains(name)) {
      out.add("/>");
    } else {
      out.add(">");
      out.addAll(body);
      out.add("</" + name + ">");
    }
  }

  /** The element as text. */
  @Override
  public String toString() {
    List<String> out = new ArrayList<>();
    render(out);
    return String.join("", out);
  }
}
