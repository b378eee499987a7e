using System.Runtime.InteropServices;

namespace Plumbmark.Drawing.Floor;

/// <summary>A part of a picture that is taken, picture units from the upper left corner.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Patch(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Whether two patches cover a place in common.</summary>
    public bool Overlaps(Patch other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
}
