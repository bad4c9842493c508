using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>The parts of an entry or of the shop that go into written advice.</summary>
internal static class AdviceBinder
{
    public static Advice Advice(Fields fields)
    {
        var advice = fields.Inner("advice");
        return new Advice(
            advice.Text("routine")?.Value, advice.Text("settling in")?.Value, advice.Text("costs")?.Value);
    }

    /// <summary>Nothing when the entry does not say when its species is about.</summary>
    public static Activity? Activity(Fields fields, Evidence byDefault)
    {
        var active = fields.Inner("active");
        return active.Texts("when") is { Count: > 0 } when
            ? new Activity(when, EvidenceWord.Read(active.Text("evidence")) ?? byDefault)
            : null;
    }
}
