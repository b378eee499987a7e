using System.Text;
using System.Text.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>Reads the bytes of a JSON file (RFC 8259) into parts that know their place.</summary>
public static class JsonText
{
    /// <summary>A larger file is refused unread: a car with every reading and part is far below this.</summary>
    public const int LargestFileBytes = 8 * 1024 * 1024;

    private const int DeepestNesting = 32;

    /// <summary>The file's outermost value, or null with the fault recorded when the bytes are not JSON.</summary>
    public static JsonPart? Read(ReadOnlySpan<byte> utf8, Faults faults)
    {
        if (utf8.Length > LargestFileBytes)
        {
            var megabytes = utf8.Length / 1048576.0;
            faults.Add(
                new Fault("", 0, 0, Texts.Say("car.json.the-file-has-mb-a", Texts.Number(megabytes, "0.0"), LargestFileBytes / 1048576))
            );
            return null;
        }

        if (utf8.StartsWith(Encoding.UTF8.Preamble))
        {
            utf8 = utf8[Encoding.UTF8.Preamble.Length..];
        }

        var places = new Places(utf8);
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = DeepestNesting });
        try
        {
            reader.Read();
            var whole = ReadValue(ref reader, "", places);
            reader.Read();
            return whole;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or DecoderFallbackException)
        {
            var at = e is JsonException { LineNumber: { } line, BytePositionInLine: { } inLine }
                ? places.Of((int)line, (int)inLine)
                : places.Of((int)reader.TokenStartIndex);
            faults.Add(new Fault("", at.Line, at.Column, WhatIsWrong(utf8, e)));
            return null;
        }
    }

    private static JsonPart ReadValue(ref Utf8JsonReader reader, string path, Places places)
    {
        var (line, column) = places.Of((int)reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                return ReadGroup(ref reader, new JsonPart(JsonValueKind.Object, path, line, column), places);
            case JsonTokenType.StartArray:
                return ReadList(ref reader, new JsonPart(JsonValueKind.Array, path, line, column), places);
            case JsonTokenType.String:
                return new JsonPart(JsonValueKind.String, path, line, column, reader.GetString()!);
            case JsonTokenType.Number:
                return new JsonPart(JsonValueKind.Number, path, line, column, Encoding.UTF8.GetString(reader.ValueSpan));
            case JsonTokenType.True:
                return new JsonPart(JsonValueKind.True, path, line, column);
            case JsonTokenType.False:
                return new JsonPart(JsonValueKind.False, path, line, column);
            default:
                return new JsonPart(JsonValueKind.Null, path, line, column);
        }
    }

    private static JsonPart ReadGroup(ref Utf8JsonReader reader, JsonPart group, Places places)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var name = reader.GetString()!;
            var path = group.Path.Length == 0 ? name : $"{group.Path}.{name}";
            reader.Read();
            group.MemberList.Add((name, ReadValue(ref reader, path, places)));
        }

        return group;
    }

    private static JsonPart ReadList(ref Utf8JsonReader reader, JsonPart list, Places places)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            list.ItemList.Add(ReadValue(ref reader, $"{list.Path}[{list.ItemList.Count}]", places));
        }

        return list;
    }

    private static string WhatIsWrong(ReadOnlySpan<byte> utf8, Exception e)
    {
        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
        {
            return "The file is empty; a car file begins with {.";
        }

        // The framework's sentence ends with its own place, counted from 0; ours stands in front, counted from 1.
        var message = e.Message.Split(" LineNumber:")[0].Split(Texts.Say("car.json.path"))[0];
        return Texts.Say("car.json.this-is-not-json-if", message);
    }

    /// <summary>Turns a byte position into a line and a column of characters.</summary>
    private sealed class Places
    {
        private readonly byte[] _utf8;
        private readonly List<int> _lineStarts = [0];

        public Places(ReadOnlySpan<byte> utf8)
        {
            _utf8 = utf8.ToArray();
            for (var i = 0; i < _utf8.Length; i++)
            {
                if (_utf8[i] == (byte)'\n')
                {
                    _lineStarts.Add(i + 1);
                }
            }
        }

        public (int Line, int Column) Of(int position)
        {
            var index = _lineStarts.BinarySearch(position);
            var line = index >= 0 ? index : ~index - 1;
            return Of(line, position - _lineStarts[line]);
        }

        public (int Line, int Column) Of(int line, int byteInLine)
        {
            var start = _lineStarts[Math.Min(line, _lineStarts.Count - 1)];
            var length = Math.Clamp(byteInLine, 0, _utf8.Length - start);
            return (line + 1, Encoding.UTF8.GetCharCount(_utf8, start, length) + 1);
        }
    }
}
