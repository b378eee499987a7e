using Plumbmark.Inspection.Press;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Press;

/// <summary>The form about a part: as it is known, or as it was typed.</summary>
public sealed record DescriptionView(OpenCar Car, PressJob Job, IReadOnlyDictionary<string, string> Fields, FieldFaults Faults)
{
    /// <summary>How many lines there is room for.</summary>
    public int Lines => Math.Max(DescriptionFields.Lines, Job.Lines.Count);

    /// <summary>How often being out can be written.</summary>
    public int OutReadings => Math.Max(DescriptionFields.OutReadings, Job.OutBy.Count);

    /// <summary>The text of a field; empty where there is none.</summary>
    public string Value(string field) => Fields.TryGetValue(field, out var text) ? text : "";

    /// <summary>The page for a request; null when there is no such job.</summary>
    public static DescriptionView? Of(CarRequest request, FieldFaults? faults = null)
    {
        if (request.Job() is not { } job)
        {
            return null;
        }

        var known = DescriptionFields.Of(job);
        if (faults is not null)
        {
            var sent = request.Http.Request.Form.Where(f => f.Key is not (FormFields.ForgeryToken or FormFields.FormId));
            known = sent.ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal);
        }

        return new(request.Car, job, known, faults ?? new FieldFaults());
    }
}
