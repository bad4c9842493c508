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
    private readonly TankSentences _tanks = new(site);
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
        if (gathering.Verdict == Verdict.KeepApart)
        {
            DecideFirst(gathering);
            return _text.ToString();
        }
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
            Line("  " + _sentences.Of(reason, pair.Verdict));
    }

    private void Tank(Gathering gathering)
    {
        if (gathering.Tank is not { } tank)
            return;
        Line("");
        Line(_tanks.Verdict(gathering));
        foreach (var line in _tanks.Missing(tank))
            Line("  " + line);
        foreach (var (mate, reason) in gathering.InTank)
            Line("  " + _fits.Of(mate, reason));
        foreach (var line in _tanks.Room(gathering))
            Line("  " + line);
        foreach (var line in TankLines.Make(gathering, tank, Words))
            Line("  " + line);
    }

    /// <summary>Nothing is told of a life together of those that must not have one.</summary>
    private void DecideFirst(Gathering gathering)
    {
        Line("");
        Line(Words["browser.decide"]);
        foreach (var pair in gathering.Apart)
            Line($"  {_sentences.NameOf(pair.One)} + {_sentences.NameOf(pair.Other)}");
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
            Line(_sentences.GroupOf(mate));
    }

    private void Line(string line) => _text.Append(line).Append('\n');
}
