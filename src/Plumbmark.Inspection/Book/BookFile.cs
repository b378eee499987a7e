using System.Buffers;
using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Book.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>The file in which owners share book pages: written the same to the byte for the same pages, read as a whole or refused with every fault.</summary>
public static class BookFile
{
    /// <summary>What the file calls itself.</summary>
    public const string Format = "plumbmark-book";

    /// <summary>The version of the format that this program writes.</summary>
    public const int Version = 1;

    /// <summary>The pages in the bytes of a file, or everything that is wrong with them.</summary>
    public static BookFileOutcome Read(ReadOnlySpan<byte> utf8)
    {
        var faults = new Faults();
        var whole = JsonText.Read(utf8, faults);
        var pages = whole is null ? [] : ReadPages(whole, faults);
        return faults.Count == 0 ? new BookFileOutcome.Accepted(pages) : new BookFileOutcome.Refused(faults.InOrder());
    }

    /// <summary>The file's bytes, UTF-8 with a line end at the end.</summary>
    public static byte[] Write(IReadOnlyList<BookPage> pages)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, JsonWriting.Readable))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            json.WriteList("pages", pages, p => PageJson.Write(json, p));
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>The published description of the file (JSON Schema 2020-12), as it stands in <c>schemas/</c>.</summary>
    public static string Schema()
    {
        using var stream = typeof(BookFile).Assembly.GetManifestResourceStream("book.schema.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static IReadOnlyList<BookPage> ReadPages(JsonPart whole, Faults faults)
    {
        var fields = new Fields(whole, faults, LengthUnit.Millimetre);
        if (whole.Kind != JsonValueKind.Object)
        {
            return [];
        }

        if (fields.Required("format") is { } format && format.Text != Format)
        {
            faults.Add(format, Texts.Say("book.file.found-is-needed-here", format.Describe(), Format));
        }

        fields.RequiredWhole("version", Version, Version);
        var pages = PartJson.Once(fields, "pages", PageJson.Read, p => p.Id);
        fields.RefuseOthers();
        return pages;
    }
}
