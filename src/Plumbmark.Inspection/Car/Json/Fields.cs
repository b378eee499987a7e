using System.Globalization;
using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>The fields of one group in a file, read by name. Every reading method records a fault and gives null rather than stop.</summary>
/// <remarks>A field that is <c>null</c> in the file counts as not given. Call <see cref="RefuseOthers"/> last: it knows which names were asked for.</remarks>
public sealed class Fields
{
    private readonly Dictionary<string, JsonPart> _byName;
    private readonly List<string> _asked;
    private readonly LengthUnit _units;

    /// <summary>The fields of a group; anything else than a group is recorded as a fault and read as an empty one.</summary>
    /// <param name="part">The group.</param>
    /// <param name="faults">Where faults go.</param>
    /// <param name="units">The unit of a length written as a bare number.</param>
    public Fields(JsonPart part, Faults faults, LengthUnit units)
    {
        Part = part;
        Faults = faults;
        _units = units;
        _byName = new(StringComparer.Ordinal);
        _asked = [];
        if (part.Kind != JsonValueKind.Object)
        {
            faults.Add(part, $"Found {part.Describe()}; a group {{ }} of named fields is needed here.");
        }

        foreach (var (name, value) in part.Members)
        {
            if (!_byName.TryAdd(name, value))
            {
                faults.Add(value, Texts.Say("car.fields.the-field-is-given-twice", name));
            }
        }
    }

    private Fields(Fields same, LengthUnit units)
    {
        (Part, Faults, _units, _byName, _asked) = (same.Part, same.Faults, units, same._byName, same._asked);
    }

    /// <summary>The group itself, for a fault that belongs to it as a whole.</summary>
    public JsonPart Part { get; }

    /// <summary>Where faults go.</summary>
    public Faults Faults { get; }

    /// <summary>The unit of a length written as a bare number.</summary>
    public LengthUnit Units => _units;

    /// <summary>The part under a name, or null when it is not given or is null.</summary>
    public JsonPart? Optional(string name)
    {
        _asked.Add(name);
        return _byName.TryGetValue(name, out var part) && part.Kind != JsonValueKind.Null ? part : null;
    }

    /// <summary>The part under a name; a fault when it is not given.</summary>
    public JsonPart? Required(string name)
    {
        var part = Optional(name);
        if (part is null && Part.Kind == JsonValueKind.Object)
        {
            Faults.Add(Part, Texts.Say("car.fields.the-field-is-missing-it", name));
        }

        return part;
    }

    /// <summary>A text that must be given and must not be blank.</summary>
    public string? RequiredText(string name) => Text(Required(name), mayBeBlank: false);

    /// <summary>A text that may be left out.</summary>
    public string? OptionalText(string name) => Text(Optional(name), mayBeBlank: true);

    /// <summary>A length that must be given: a number in the file's units, or a text as a person writes it.</summary>
    public Length? RequiredLength(string name, LengthBound bound = LengthBound.NotNegative) => Length(Required(name), bound);

    /// <summary>A length that may be left out: missing is not zero.</summary>
    public Length? OptionalLength(string name, LengthBound bound = LengthBound.NotNegative) => Length(Optional(name), bound);

    /// <summary>A plain number that may be left out, with the range that is allowed.</summary>
    public double? OptionalNumber(string name, double least = double.MinValue, double most = double.MaxValue)
    {
        if (Optional(name) is not { } part)
        {
            return null;
        }

        if (
            part.Kind == JsonValueKind.Number
            && double.TryParse(part.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && number >= least
            && number <= most
        )
        {
            return number;
        }

        Faults.Add(part, Texts.Say("car.fields.found-is-needed-here", part.Describe(), AllowedNumber(least, most)));
        return null;
    }

    /// <summary>A whole number that must be given, with the range that is allowed.</summary>
    public int? RequiredWhole(string name, int least, int most)
    {
        if (Required(name) is not { } part)
        {
            return null;
        }

        if (
            part.Kind == JsonValueKind.Number
            && int.TryParse(part.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole)
            && whole >= least
            && whole <= most
        )
        {
            return whole;
        }

        var allowed = least == most ? $"{least}" : Texts.Say("car.fields.a-whole-number-from-to", least, most);
        Faults.Add(part, Texts.Say("car.fields.found-is-needed-here", part.Describe(), allowed));
        return null;
    }

    /// <summary>True or false; false when left out.</summary>
    public bool Truth(string name)
    {
        var part = Optional(name);
        if (part is not null && part.Kind is not (JsonValueKind.True or JsonValueKind.False))
        {
            Faults.Add(part, Texts.Say("car.fields.found-true-or-false-is", part.Describe()));
        }

        return part?.Kind == JsonValueKind.True;
    }

    /// <summary>One of a closed set of words that must be given.</summary>
    public T? RequiredWord<T>(string name, IReadOnlyDictionary<string, T> words)
        where T : struct => Word(Required(name), words);

    /// <summary>One of a closed set of words that may be left out.</summary>
    public T? OptionalWord<T>(string name, IReadOnlyDictionary<string, T> words)
        where T : struct => Word(Optional(name), words);

    /// <summary>The items of a list, each read by <paramref name="read"/>; empty when left out. An item that reads as null is left away.</summary>
    public IReadOnlyList<T> List<T>(string name, Func<JsonPart, T?> read)
        where T : class => Items(name).Select(read).OfType<T>().ToList();

    /// <summary>The parts of a list; empty when left out or when it is not a list, which is a fault.</summary>
    public IReadOnlyList<JsonPart> Items(string name)
    {
        if (Optional(name) is not { } part)
        {
            return [];
        }

        if (part.Kind != JsonValueKind.Array)
        {
            Faults.Add(part, Texts.Say("car.fields.found-a-list-is-needed", part.Describe()));
        }

        return part.Items;
    }

    /// <summary>The fields of a group that may be left out.</summary>
    public Fields? Group(string name) => Optional(name) is { } part ? new Fields(part, Faults, _units) : null;

    /// <summary>The fields of one item of a list, with the same unit and the same place for faults.</summary>
    public Fields Item(JsonPart part) => new(part, Faults, _units);

    /// <summary>The same fields with another unit for bare numbers: a group may say its own.</summary>
    public Fields In(LengthUnit units) => new(this, units);

    /// <summary>Records a fault for every field whose name no reading method asked for.</summary>
    public void RefuseOthers()
    {
        foreach (var (name, part) in Part.Members.Where(m => !_asked.Contains(m.Name)))
        {
            Faults.Add(part, Texts.Say("car.fields.the-field-is-not-known", name, string.Join(", ", _asked.Distinct())));
        }
    }

    /// <summary>A length in a part, or null with the fault recorded.</summary>
    public Length? Length(JsonPart? part, LengthBound bound) => part is null ? null : LengthPart.Read(part, _units, bound, Faults);

    private string? Text(JsonPart? part, bool mayBeBlank)
    {
        if (part is null)
        {
            return null;
        }

        if (part.Kind == JsonValueKind.String && (mayBeBlank || !string.IsNullOrWhiteSpace(part.Text)))
        {
            return part.Text;
        }

        Faults.Add(
            part,
            Texts.Say("car.fields.found-a-text-is-needed", part.Describe(), mayBeBlank ? "" : Texts.Say("car.fields.that-is-not-blank"))
        );
        return null;
    }

    private T? Word<T>(JsonPart? part, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (part is null)
        {
            return null;
        }

        if (part.Kind == JsonValueKind.String && words.TryGetValue(part.Text, out var value))
        {
            return value;
        }

        Faults.Add(part, Texts.Say("car.fields.found-one-of-is-needed", part.Describe(), string.Join(", ", words.Keys)));
        return null;
    }

    private static string AllowedNumber(double least, double most) =>
        (least, most) switch
        {
            (double.MinValue, double.MaxValue) => Texts.Say("car.fields.a-number"),
            (_, double.MaxValue) => Texts.Say("car.fields.a-number-of-or-more", least),
            _ => Texts.Say("car.fields.a-number-from-to", least, most),
        };
}
