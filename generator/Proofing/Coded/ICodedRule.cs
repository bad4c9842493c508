using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>A rule that takes more than conditions on one entry: arithmetic, or the other entries.</summary>
internal interface ICodedRule
{
    /// <summary>Its name in words, which waivers use.</summary>
    string Name { get; }

    IEnumerable<Breach> Check(Entry entry);
}
