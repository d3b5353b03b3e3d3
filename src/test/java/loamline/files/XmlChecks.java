package loamline.files;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads XML that we wrote, as a stranger would. */
final class XmlChecks {
    private XmlChecks() {}

    /** Throws unless a text is valid under a schema of {@code src/test/resources/loamline/files/schema}. */
    static void validate(String text, String schema) throws Exception {
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(XmlChecks.class.getResource("schema/" + schema))
                .newValidator()
                .validate(new StreamSource(new StringReader(text)));
    }

    static Document parse(String text) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder()
                .parse(new InputSource(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))));
    }

    /** The text of every element of a name, in order. */
    static List<String> texts(Document document, String element) {
        NodeList nodes = document.getElementsByTagNameNS("*", element);
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> nodes.item(i).getTextContent())
                .toList();
    }
}
