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
  private final StringBuilder attributes = new StringBuilder(0);

  /** Finished text and children in their order; all is written once, with the outermost element. */
  private final List<Object> body = new ArrayList<>(2);

  /** True once it is a child: what is added later would be in some outputs and not in others. */
  private boolean closed;

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
    open();
    attributes.append(' ').append(attribute).append("=\"").append(Escape.text(value)).append('"');
    return this;
  }

  /** Sets an attribute that is a length or a place in pixels, with one decimal. */
  public Element attr(String attribute, double pixels) {
    return attr(attribute, Pixels.text(pixels));
  }

  /** Adds text. */
  public Element text(String text) {
    open();
    body.add(Escape.text(text));
    return this;
  }

  /** Adds a child. */
  public Element add(Element child) {
    open();
    child.closed = true;
    body.add(child);
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

  private void open() {
    if (closed) {
      throw new IllegalStateException("element " + name + " is in another one already");
    }
  }

  private void render(StringBuilder out) {
    out.append('<').append(name).append(attributes);
    if (VOID.contains(name)) {
      out.append("/>");
      return;
    }
    out.append('>');
    for (Object part : body) {
      if (part instanceof Element child) {
        child.render(out);
      } else {
        out.append(part);
      }
    }
    out.append("</").append(name).append('>');
  }

  /** The element as text. */
  @Override
  public String toString() {
    StringBuilder out = new StringBuilder();
    render(out);
    return out.toString();
  }
}
