using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Bench;

/// <summary>The answer for all parts on the bench.</summary>
/// <param name="Verdict">Out when any part is to be straightened or replaced; true when every part may be kept; otherwise can't tell yet.</param>
/// <param name="Headline">The answer in one sentence.</param>
/// <param name="Parts">Part by part, in the order of the file.</param>
public sealed record BenchAnswer(Verdict Verdict, string Headline, IReadOnlyList<PartAnswer> Parts)
{
    /// <summary>The answer for one part; null when it is not on the bench.</summary>
    public PartAnswer? Part(string id) => Parts.FirstOrDefault(p => p.Part.Id == id);
}
