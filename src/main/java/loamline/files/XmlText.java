package loamline.files;

import java.io.StringWriter;
import java.util.function.IntPredicate;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** An XML 1.0 text in the making, each element on a line of its own. The same calls give the same text. */
final class XmlText {
    /** Stands for characters that XML 1.0 cannot hold. */
    private static final int REPLACEMENT = 0xFFFD;

    @FunctionalInterface
    private interface Step {
        void write() throws XMLStreamException;
    }

    private final StringWriter out = new StringWriter();
    private final XMLStreamWriter xml;

    XmlText() {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
        } catch (XMLStreamException e) {
            throw new IllegalStateException("no XML can be written", e);
        }
    }

    /** Opens an element, for {@link #attribute}s and others inside it. */
    XmlText open(String name) {
        return step(() -> xml.writeStartElement(name));
    }

    /** An attribute of the element just opened; {@code xmlns} is one of them. */
    XmlText attribute(String name, String value) {
        return step(() -> xml.writeAttribute(name, legal(value)));
    }

    XmlText close() {
        return step(() -> {
            xml.writeEndElement();
            xml.writeCharacters("\n");
        });
    }

    /** An element with nothing but text in it. */
    XmlText text(String name, String text) {
        return step(() -> {
            xml.writeStartElement(name);
            xml.writeCharacters(legal(text));
            xml.writeEndElement();
            xml.writeCharacters("\n");
        });
    }

    private XmlText step(Step step) {
        try {
            step.write();
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException("XML written to memory", e);
        }
    }

    @Override
    public String toString() {
        return out.toString();
    }

    /** A text with every character that XML 1.0 cannot hold (section 2.2) replaced. */
    static String legal(String text) {
        IntPredicate holds = c -> c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
        return text.codePoints()
                .map(c -> holds.test(c) ? c : REPLACEMENT)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
