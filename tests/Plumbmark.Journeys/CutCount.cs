using System.Globalization;
using System.Text.Json;

namespace Plumbmark.Journeys;

/// <summary>What the cuts have come to so far. A long run writes it down after every batch and goes on from there when it is started again.</summary>
internal sealed class CutCount
{
    /// <summary>How many cuts, by what passed while the wire was cut.</summary>
    public SortedDictionary<string, int> Cuts { get; init; } = new(StringComparer.Ordinal);

    /// <summary>Cuts of the runs made when only readings waited.</summary>
    public int CutsOfReadingsAlone { get; init; }

    /// <summary>All that was entered.</summary>
    public int Entered { get; set; }

    /// <summary>What of it was no reading of the tape.</summary>
    public int EnteredElsewhere { get; set; }

    /// <summary>How often something was sent.</summary>
    public int Posts { get; set; }

    /// <summary>Kills of the app.</summary>
    public int Kills { get; set; }

    /// <summary>Closed tabs.</summary>
    public int Tabs { get; set; }

    /// <summary>Entered and not kept.</summary>
    public int Lost { get; set; }

    /// <summary>Kept more than once.</summary>
    public int Doubled { get; set; }

    /// <summary>Kept in another order than entered.</summary>
    public int OutOfOrder { get; set; }

    /// <summary>How many cuts in all.</summary>
    public int Done() => Cuts.Values.Sum();

    /// <summary>The count that was written down; a new one when there is none.</summary>
    public static CutCount From(string? file) =>
        file is { Length: > 0 } && File.Exists(file) ? JsonSerializer.Deserialize<CutCount>(File.ReadAllText(file))! : new CutCount();

    /// <summary>Writes it down.</summary>
    public void WriteTo(string file) => File.WriteAllText(file, JsonSerializer.Serialize(this, s_indented) + "\n");

    /// <summary>For a person.</summary>
    public string Table(int seed, int batch) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            Two phones (Chromium, 360 x 740) enter at once; the wire of each is cut at a random byte, {Done()} times in all (seeds from {seed}).
            Three pages in five are the floor; the others photos, measures on the bench, crack tests and readings at the wheels.
            The first {CutsOfReadingsAlone} cuts were made when only readings of the floor waited.
            Every batch of {batch} cuts ends with the comparison of what was entered with what the journal holds, in order.

            the wire was cut while there passed    times
            {string.Join('\n', Cuts.Select(c => $"{c.Key, -37}{c.Value, 7}"))}

            entered                              {Entered, 7}
            of it no reading of the floor        {EnteredElsewhere, 7}
            times something was sent             {Posts, 7}
            tabs closed with something waiting   {Tabs, 7}
            app killed and started again         {Kills, 7}
            lost                                 {Lost, 7}
            doubled                              {Doubled, 7}
            out of order                         {OutOfOrder, 7}

            """
        );

    private static readonly JsonSerializerOptions s_indented = new() { WriteIndented = true };
}
