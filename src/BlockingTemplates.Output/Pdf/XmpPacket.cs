using System.Text;
using System.Xml;

namespace BlockingTemplates.Output.Pdf;

/// <summary>A document's metadata as XMP (ISO 16684-1): title, maker of the file, identity; no date.</summary>
internal static class XmpPacket
{
    private const string Rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private const string Dc = "http://purl.org/dc/elements/1.1/";
    private const string Xmp = "http://ns.adobe.com/xap/1.0/";
    private const string XmpMm = "http://ns.adobe.com/xap/1.0/mm/";

    public static byte[] Write(string title, Guid identity)
    {
        using var stream = new MemoryStream();
        var settings = new XmlWriterSettings
        {
            Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            OmitXmlDeclaration = true,
            ConformanceLevel = ConformanceLevel.Fragment,
            NewLineChars = "\n",
            CheckCharacters = true,
        };
        using (var xml = XmlWriter.Create(stream, settings))
        {
            xml.WriteProcessingInstruction("xpacket", "begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"");
            xml.WriteStartElement("x", "xmpmeta", "adobe:ns:meta/");
            xml.WriteStartElement("rdf", "RDF", Rdf);
            xml.WriteStartElement("rdf", "Description", Rdf);
            xml.WriteAttributeString("rdf", "about", Rdf, "");
            xml.WriteStartElement("dc", "title", Dc);
            xml.WriteStartElement("rdf", "Alt", Rdf);
            xml.WriteStartElement("rdf", "li", Rdf);
            xml.WriteAttributeString("xml", "lang", null, "x-default");
            xml.WriteString(title);
            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteElementString("xmp", "CreatorTool", Xmp, "Blocking Templates");
            xml.WriteElementString("xmpMM", "DocumentID", XmpMm, $"uuid:{identity:D}");
            xml.WriteElementString("xmpMM", "InstanceID", XmpMm, $"uuid:{identity:D}");
            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteProcessingInstruction("xpacket", "end=\"w\"");
        }

        return stream.ToArray();
    }
}
