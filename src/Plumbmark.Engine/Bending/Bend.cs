namespace Plumbmark.Engine.Bending;

/// <summary>A bend of one plane: where it is, how much the part turns there, over what length; each with its standard uncertainty (k = 1).</summary>
/// <param name="CentreMetres">Station of the middle of the bend, m.</param>
/// <param name="CentreUncertaintyMetres">Standard uncertainty of it, m.</param>
/// <param name="AngleRadians">How far the part turns, rad; positive where the crown lies towards positive heights.</param>
/// <param name="AngleUncertaintyRadians">Standard uncertainty of it, rad, with the doubt about place and length in it.</param>
/// <param name="LengthMetres">Length over which it turns, m; 0 for a kink.</param>
/// <param name="LengthUncertaintyMetres">Standard uncertainty of it, m; 0 for a kink, whose length is not asked for.</param>
public sealed record Bend(
    double CentreMetres,
    double CentreUncertaintyMetres,
    double AngleRadians,
    double AngleUncertaintyRadians,
    double LengthMetres,
    double LengthUncertaintyMetres
)
{
    /// <summary>How far the bent part lies from the chord between two of its stations, m; positive on the crown side.</summary>
    /// <param name="stationMetres">The place asked for, m.</param>
    /// <param name="fromMetres">One end of the chord, m.</param>
    /// <param name="toMetres">The other end, m.</param>
    public double HeightOverChord(double stationMetres, double fromMetres, double toMetres)
    {
        var (start, end) = (Turn(fromMetres), Turn(toMetres));
        var chord = start + ((end - start) * (stationMetres - fromMetres) / (toMetres - fromMetres));
        return AngleRadians * (chord - Turn(stationMetres));
    }

    /// <summary>The shape of a bend of 1 rad: 0 before it, an arc in it, and a straight line of slope 1 after it.</summary>
    /// <param name="distanceMetres">Distance past the middle of the bend, m.</param>
    /// <param name="lengthMetres">Length of the bend, m.</param>
    public static double UnitShape(double distanceMetres, double lengthMetres)
    {
        var into = distanceMetres + (lengthMetres / 2);
        if (into <= 0)
        {
            return 0;
        }

        return into >= lengthMetres ? distanceMetres : into * into / (2 * lengthMetres);
    }

    private double Turn(double stationMetres) => UnitShape(stationMetres - CentreMetres, LengthMetres);
}
