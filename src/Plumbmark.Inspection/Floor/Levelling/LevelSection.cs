using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Floor.Levelling;

/// <summary>How the frame stood when it was measured: what the level said at the stands, how the floor falls, whether plumb line and level agree.</summary>
/// <param name="Stands">Heights read at the stands, one each; empty when not read.</param>
/// <param name="Floor">Heights of the floor itself, above or below the level line; empty when not read.</param>
/// <param name="Plumb">The level held against the plumb line; null when not tried.</param>
public sealed record LevelSection(IReadOnlyList<StandReading> Stands, IReadOnlyList<FloorHeight> Floor, PlumbCheck? Plumb = null)
{
    /// <summary>Whether nothing is told.</summary>
    public bool IsEmpty => Stands.Count == 0 && Floor.Count == 0 && Plumb is null;
}

/// <summary>The height of the frame over one stand, read with a water level or a line laser.</summary>
/// <param name="Id">The stand's name, such as <c>rear left</c>.</param>
/// <param name="X">How far forward the stand is, as in the sketch.</param>
/// <param name="Y">How far to the left.</param>
/// <param name="Height">What the level showed there; up is positive.</param>
/// <param name="Should">What the book says the level should show there, when the rails are not level by design; null for the same everywhere.</param>
public sealed record StandReading(string Id, Length X, Length Y, Length Height, Length? Should = null);

/// <summary>The height of the floor at one place.</summary>
/// <param name="X">How far forward, as in the sketch.</param>
/// <param name="Y">How far to the left.</param>
/// <param name="Height">Above the level line that all heights refer to; usually negative, for the floor lies below it.</param>
public sealed record FloorHeight(Length X, Length Y, Length Height);

/// <summary>A level held upright beside a hanging plumb line: the gap at the foot says whether the two agree.</summary>
/// <param name="Length">Length of the level along the line.</param>
/// <param name="Gap">How far the line hangs from the level's foot when its head touches and its bubble is centred; sideways, either sign.</param>
public sealed record PlumbCheck(Length Length, Length Gap);
