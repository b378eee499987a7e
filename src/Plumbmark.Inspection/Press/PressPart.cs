using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Press;

/// <summary>The part that is to be straightened.</summary>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Kind">What it is; null while not told.</param>
/// <param name="Make">How it was made; null while not told.</param>
/// <param name="Material">Its metal; null while not told.</param>
/// <param name="Length">Its length; null when not measured.</param>
/// <param name="History">What was looked for and asked.</param>
public sealed record PressPart(string Name, PartKind? Kind, PartMake? Make, Material? Material, Length? Length, PartHistory History);
