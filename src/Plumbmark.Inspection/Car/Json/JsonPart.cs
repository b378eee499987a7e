using System.Text.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>A value in a JSON file together with its place, so that a fault can say where it stands.</summary>
/// <remarks>A number keeps the characters it was written with: <c>0.10</c> stays <c>0.10</c>.</remarks>
public sealed class JsonPart
{
    internal JsonPart(JsonValueKind kind, string path, int line, int column, string text = "")
    {
        Kind = kind;
        Path = path;
        Line = line;
        Column = column;
        Text = text;
    }

    /// <summary>What kind of value it is.</summary>
    public JsonValueKind Kind { get; }

    /// <summary>The place in the file's own terms, such as <c>frame.points[2].nominal</c>; empty for the whole file.</summary>
    public string Path { get; }

    /// <summary>The line, counted from 1.</summary>
    public int Line { get; }

    /// <summary>The column in characters, counted from 1.</summary>
    public int Column { get; }

    /// <summary>A text's characters, or a number's digits as written; empty for anything else.</summary>
    public string Text { get; }

    /// <summary>The items of a list, in order; empty for anything else.</summary>
    public IReadOnlyList<JsonPart> Items => ItemList;

    /// <summary>The members of a group, in order; a name given twice is kept twice. Empty for anything else.</summary>
    public IReadOnlyList<(string Name, JsonPart Value)> Members => MemberList;

    internal List<JsonPart> ItemList { get; } = [];

    internal List<(string Name, JsonPart Value)> MemberList { get; } = [];

    /// <summary>The text under a name in a group; null when there is none, or no text, or a blank one.</summary>
    public string? TextOf(string name) =>
        Members.FirstOrDefault(m => m.Name == name).Value is { Kind: JsonValueKind.String } part && !string.IsNullOrWhiteSpace(part.Text)
            ? part.Text
            : null;

    /// <summary>What stands here, in the words of a sentence: <c>the text "x"</c>, <c>the number 3</c>, <c>a list</c>.</summary>
    public string Describe() =>
        Kind switch
        {
            JsonValueKind.String => Texts.Say("car.json-part.the-text", Shortened(Text)),
            JsonValueKind.Number => Texts.Say("car.json-part.the-number", Shortened(Text)),
            JsonValueKind.True => "true",
            JsonValueKind.False => "false",
            JsonValueKind.Null => "null",
            JsonValueKind.Array => Texts.Say("car.json-part.a-list"),
            JsonValueKind.Object => "a group { }",
            _ => "nothing",
        };

    private static string Shortened(string text) => Printable.Shortened(text, 40);
}
