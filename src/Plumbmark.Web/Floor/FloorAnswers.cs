using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Store;

namespace Plumbmark.Web.Floor;

/// <summary>What the readings of a car say, worked out once for each state of its journal.</summary>
public sealed class FloorAnswers
{
    private const int KeptAtMost = 32;
    private readonly Lock _lock = new();
    private readonly Dictionary<long, (long Sequence, Lazy<FloorAnswer> Answer)> _byCar = [];
    private readonly Dictionary<PlanAsked, Lazy<MeasuringPlan>> _plans = [];

    // Limits and minutes are records and compare by what they say.
    private sealed record PlanAsked(long Car, long Sequence, Limits? Limits, ReadingMinutes Minutes);

    /// <summary>The plan for a car as it stands. It takes seconds for a fresh frame, so it is kept for whoever asks the same.</summary>
    public MeasuringPlan PlanFor(OpenCar car, Limits? limits, FloorOptions options)
    {
        var asked = new PlanAsked(car.Id, car.Sequence, limits, options.Minutes);
        Lazy<MeasuringPlan>? plan;
        lock (_lock)
        {
            if (!_plans.TryGetValue(asked, out plan))
            {
                if (_plans.Count >= KeptAtMost)
                {
                    _plans.Clear();
                }

                _plans[asked] = plan = new Lazy<MeasuringPlan>(() => FloorPlanner.For(car.File, limits, options));
            }
        }

        return plan.Value;
    }

    /// <summary>The answer for a car as it stands.</summary>
    public FloorAnswer For(OpenCar car)
    {
        Lazy<FloorAnswer> answer;
        lock (_lock)
        {
            if (_byCar.TryGetValue(car.Id, out var known) && known.Sequence == car.Sequence)
            {
                answer = known.Answer;
            }
            else
            {
                if (_byCar.Count >= KeptAtMost)
                {
                    _byCar.Clear();
                }

                answer = new Lazy<FloorAnswer>(() => FloorInspection.Of(car.File));
                _byCar[car.Id] = (car.Sequence, answer);
            }
        }

        // Outside the lock: two phones on the same car wait for one calculation, those on others do not.
        return answer.Value;
    }
}
