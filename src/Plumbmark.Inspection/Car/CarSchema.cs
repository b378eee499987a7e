namespace Plumbmark.Inspection.Car;

/// <summary>The published description of the car file (JSON Schema 2020-12), as it stands in <c>schemas/</c>.</summary>
public static class CarSchema
{
    /// <summary>The schema's text.</summary>
    public static string Text()
    {
        using var stream = typeof(CarSchema).Assembly.GetManifestResourceStream("car.schema.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
