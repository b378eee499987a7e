namespace Plumbmark.Engine;

/// <summary>
/// A place or a displacement in space. Of a car its axes are those of ISO 8855: x forward, y to the left, z up; of a loose part whatever axes it was measured in. Metres, unless the owner of the value says it is a
/// unit direction; a fit works in any one length unit. <c>default</c> is the origin. A component that is not a number stays not a number: nothing here invents one.
/// </summary>
/// <param name="X">Forward, metres.</param>
/// <param name="Y">To the left, metres.</param>
/// <param name="Z">Up, metres.</param>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>The forward direction.</summary>
    public static Vector3 Forward => new(1, 0, 0);

    /// <summary>The direction to the car's left; outboard for a left wheel.</summary>
    public static Vector3 Left => new(0, 1, 0);

    /// <summary>The upward direction.</summary>
    public static Vector3 Up => new(0, 0, 1);

    /// <summary>Euclidean length, in the unit of the components.</summary>
    public double Norm => Math.Sqrt(Dot(this, this));

    /// <summary>Whether all three components are finite numbers.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z);

    /// <summary>The same direction with length one; not a number when the vector is zero.</summary>
    public Vector3 Direction
    {
        get
        {
            var scale = 1 / Norm;
            return new(X * scale, Y * scale, Z * scale);
        }
    }

    /// <summary>The mirror image in the car's centre plane y = 0.</summary>
    public Vector3 Mirrored => new(X, -Y, Z);

    /// <summary>The distance between two places, metres.</summary>
    public static double Distance(Vector3 a, Vector3 b) => (a - b).Norm;

    /// <summary>The three components; the printed members of a record would follow <see cref="Direction"/> into itself for ever.</summary>
    public override string ToString() => $"({X:G9}, {Y:G9}, {Z:G9})";

    /// <summary>The scalar product.</summary>
    public static double Dot(Vector3 a, Vector3 b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    /// <summary>The vector product, right-handed.</summary>
    public static Vector3 Cross(Vector3 a, Vector3 b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    /// <summary>The part of <paramref name="a"/> at right angles to the unit direction <paramref name="unit"/>.</summary>
    public static Vector3 Across(Vector3 a, Vector3 unit) => a - (Dot(a, unit) * unit);

    /// <summary>Two unit directions square to this one and to each other; with it they are right-handed.</summary>
    internal (Vector3 First, Vector3 Second) SquareDirections()
    {
        // The axis least along this direction leaves the longest product.
        var (x, y, z) = (Math.Abs(X), Math.Abs(Y), Math.Abs(Z));
        var axis =
            x <= y && x <= z ? Forward
            : y <= z ? Left
            : Up;
        var first = Cross(axis, this).Direction;
        return (first, Cross(Direction, first));
    }

    /// <summary>The sum.</summary>
    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The difference.</summary>
    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The opposite.</summary>
    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>The vector scaled.</summary>
    public static Vector3 operator *(double scale, Vector3 a) => new(scale * a.X, scale * a.Y, scale * a.Z);
}
