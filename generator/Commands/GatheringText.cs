using System.Globalization;
using System.Text;
using CareSheets.Pages;
using CareSheets.Pages.Mates;
using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Commands;

/// <summary>A group of species as a person reads it on a terminal.</summary>
internal sealed class GatheringText(Site site)
{
    private readonly MateSentences _sentences = new(site);
    private readonly FitSentences _fits = new(site);
    private readonly StretchText _figures = new(site.Words, site.Units);
    private readonly StringBuilder _text = new();

    private Words Words => site.Words;

    public string Print(Gathering gathering)
    {
        Line(string.Join(" + ", gathering.Mates.Select(_sentences.NameOf)));
        if (gathering.Pairs.Count > 0)
            Line(_sentences.Fill($"browser.verdict_{WordOf(gathering.Verdict)}", []));
        foreach (var pair in gathering.Pairs.OrderByDescending(p => p.Verdict))
            Pair(pair);
        Tank(gathering);
        Water(gathering);
        Needs(gathering);
        return _text.ToString();
    }

    internal static string WordOf(Verdict verdict) => verdict switch
    {
        Verdict.Suits => "suits",
        Verdict.WithCare => "care",
        Verdict.KeepApart => "apart",
    };

    private void Pair(Pairing pair)
    {
        Line("");
        var verdict = Words[$"browser.{WordOf(pair.Verdict)}"];
        Line($"{_sentences.NameOf(pair.One)} + {_sentences.NameOf(pair.Other)}: {verdict}");
        foreach (var reason in pair.Reasons)
            Line("  " + _sentences.Of(reason));
    }

    private void Tank(Gathering gathering)
    {
        if (gathering is not { Tank: { } tank, Fit: { } fit })
            return;
        Line("");
        Line(Words[fit switch
        {
            Fit.Fits => "browser.tank_fits",
            Fit.Nearly => "browser.tank_nearly",
            Fit.NotKnown => "browser.tank_not_known",
            Fit.DoesNotFit => "browser.tank_not",
        }]);
        foreach (var (mate, reason) in gathering.InTank)
            Line("  " + _fits.Of(mate, reason));
        if (gathering.LacksRoomForAll && gathering.InTank.Count == 0)
            Line("  " + Words.Say("browser.tank_all",
                ("all", Litres(gathering.VolumeForAll)), ("given", Litres(tank.Volume.InLitres))));
        foreach (var line in TankLines.Make(gathering, tank, Words))
            Line("  " + line);
    }

    private void Water(Gathering gathering)
    {
        Line("");
        foreach (var water in gathering.Water.Where(w => w.IsWorthTelling))
        {
            var shared = water.Shared is null && water.Unknown.Count == gathering.Mates.Count
                ? Words["sentence.unknown"]
                : water.Shared is null ? Words["browser.nothing_shared"]
                : _figures.Show(water.Declaration.Dimension, water.Shared, Rounding.Inward);
            var names = string.Join(", ", water.Unknown.Select(_sentences.NameOf));
            Line($"{_sentences.FieldName(water.Declaration.Field)}: " + (names.Length == 0
                ? shared
                : Words.Say("browser.shared_unknown", ("shared", shared), ("names", names))));
        }
    }

    private void Needs(Gathering gathering)
    {
        foreach (var fact in new NeedFolds(Words).Facts(gathering.Needs))
            Line($"{fact.Label}: {fact.Value}");
        if (gathering.Needs.Needs.Count > 0)
            Line($"{Words["browser.needs"]}: " +
                string.Join(", ", gathering.Needs.Needs.Select(n => Words[$"needs.{n}"])));
        foreach (var mate in gathering.Mates)
            Line(_sentences.Fill($"browser.group_{mate.GroupKind}",
                [("name", _sentences.NameOf(mate)), ("count", mate.Group.ToString(CultureInfo.InvariantCulture))]));
    }

    private string Litres(double litres) =>
        _figures.Show(DimensionCatalogue.Volume, Stretch.Exactly(litres), Rounding.Nearest);

    private void Line(string line) => _text.Append(line).Append('\n');
}
