using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Drawing.Floor;

/// <summary>Names beside the points: in lanes left and right (<see cref="PointLabels"/>) or above and below (<see cref="SideLabels"/>).</summary>
internal interface IPointLabels
{
    /// <summary>How many names found no room.</summary>
    int LeftOut { get; }

    /// <summary>The label of a point with its leader; nothing when it found no room.</summary>
    IEnumerable<Shape> Draw(Seen seen);
}
