using System.Runtime.InteropServices;

namespace Plumbmark.Drawing.Pictures;

/// <summary>A place in a picture, not on the car: units of the picture, x to the right, y down. <c>default</c> is the top left corner.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Spot(double X, double Y)
{
    /// <summary>The place so far further right and down.</summary>
    public Spot Moved(double right, double down) => new(X + right, Y + down);
}
