using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>An entry's answers to a customer's questions, as labelled lines that page, sheet and card share.</summary>
internal sealed class EntryFacts(Site site)
{
    private Words Words => site.Words;

    /// <summary>Customers are told what a length includes, not its abbreviation.</summary>
    public Fact Length(Entry entry) => new(
        Words["fact.adult_length"],
        site.Quantities.Show(entry.Adult.Length.Value.WithoutBasis(), Rounding.Upward).Both,
        Words[$"basis.{entry.Adult.Length.Value.Basis}"]);

    public IEnumerable<Fact> Room(Entry entry)
    {
        yield return Length(entry);
        if (entry.Adult.Height is { } height)
            yield return new Fact(Words["fact.adult_height"], site.Quantities.Show(height.Value, Rounding.Upward).Both);
        if (entry.Adult.LifeSpan is { } span)
            yield return new Fact(Words["fact.life_span"], site.Quantities.Show(span.Value, Rounding.Nearest).First);
        yield return Group(entry);
        yield return Tank(entry);
        yield return Lid(entry);
        yield return new Fact(Words["fact.substrate"], Words[$"substrate.{entry.Tank.Substrate.Value}"]);
        if (entry.Tank.Needs.Count > 0)
            yield return new Fact(Words["fact.needs"], List("needs", entry.Tank.Needs));
    }

    public Fact Group(Entry entry)
    {
        var lives = Words[$"lives.{entry.Company.Lives.Value}"];
        return entry.Company.GroupKind switch
        {
            GroupKind.Several or GroupKind.Free =>
                new(Words["fact.group"], Words.Count("fact.group", entry.Company.Group.Value), lives),
            GroupKind.Alone => new(Words["fact.group"], Words["fact.group_alone"], lives),
            GroupKind.Only => new(Words["fact.group"], Words["fact.group_only"], Words["fact.group_fierce"]),
        };
    }

    /// <summary>Length and width in one, then the volume, both rounded up.</summary>
    public Fact Tank(Entry entry)
    {
        var tank = entry.Tank;
        var sides = new[] { tank.Length, tank.Width, tank.Height }.OfType<Sourced<StatedRange>>()
            .Select(side => site.Quantities.Show(side.Value, Rounding.Upward)).ToList();
        var volume = site.Quantities.Show(tank.Volume.Value, Rounding.Upward);
        var sentence = sides.Count == 1 ? "sentence.tank" : "sentence.tank_sides";
        string Say(Func<Shown, string> part) =>
            Words.Say(sentence, ("sides", string.Join(" × ", sides.Select(part))), ("volume", part(volume)));
        return new Fact(Words["fact.tank"], Say(s => s.First), volume.Second.Length == 0 ? "" : Say(s => s.Second));
    }

    public Fact Lid(Entry entry) => new(Words["fact.lid"], Words[$"lid.{entry.Tank.Lid.Value}"]);

    public IEnumerable<Fact> WaterWords(Entry entry) => entry.CareWords.Select(word => new Fact(
        Words.Or($"range.{word.Declaration.Field}", word.Declaration.Label),
        Words[$"{word.Declaration.Field}.{word.Word.Value}"]));

    public IEnumerable<Fact> Food(Entry entry)
    {
        yield return new Fact(Words["fact.diet"], List("diet", entry.Diet));
        if (entry.Foods.Count > 0)
            yield return new Fact(Words["fact.foods"], Plain(entry.Foods));
    }

    public IEnumerable<Fact> Company(Entry entry)
    {
        yield return new Fact(Words["fact.own_kind"], Words[$"ownKind.{entry.Company.OwnKind.Value}"]);
        yield return new Fact(Words["fact.others"], Others(entry));
        if (entry.Company.Neighbours is { Value: not "any" } neighbours)
            yield return new Fact(
                Words["fact.neighbours"], KeptFromOthers(entry) ?? Words[$"neighbours.{neighbours.Value}"]);
        if (entry.Company.NotWith.Count > 0)
            yield return new Fact(Words["fact.not_with"], NotWith(entry));
        if (entry.Adult.Fins is { Value: "trailing" } fins)
            yield return new Fact(Words["fact.fins"], Words[$"fins.{fins.Value}"]);
        if (entry.Company.Levels.Count > 0)
            yield return new Fact(Words["fact.level"], List("level", entry.Company.Levels));
        if (entry.Company.Eats.Count > 0)
            yield return new Fact(Words["fact.eats"], List("eats", entry.Company.Eats));
        if (entry.Fields.Words("habits") is { Count: > 0 } habits)
            yield return new Fact(Words["fact.habits"], List("habits", habits));
        if (entry.Adult.Sexes is { } sexes)
            yield return new Fact(Words["fact.sexes"], sexes.Value);
    }

    /// <summary>Its temper to other fishes, never without what it does to small ones.</summary>
    public string Others(Entry entry)
    {
        var temper = Words[$"others.{entry.Company.Others.Value}"];
        return !entry.Company.EatsFish ? temper
            : Words.Say(entry.Company.Others.Value == "peaceful" ? "fact.but_eats_fish" : "fact.eats_fish",
                ("temper", temper));
    }

    /// <summary>That no other species should live beside it; nothing where some may.</summary>
    public string? KeptFromOthers(Entry entry) => entry.Company.Neighbours is not { Value: "none" } none ? null
        : entry.Company.Group.Value == 1 ? Words["fact.neighbours_alone"] : Words[$"neighbours.{none.Value}"];

    /// <summary>When it is about; nothing where the entry is silent.</summary>
    public IEnumerable<Fact> Active(Entry entry)
    {
        if (entry.Activity is { } activity)
            yield return new Fact(Words["fact.active"], List("when", activity.When));
    }

    public IEnumerable<Fact> Habitat(Entry entry)
    {
        if (entry.Origin.Habitats.Count > 0)
            yield return new Fact(Words["fact.habitat"], Plain(entry.Origin.Habitats));
    }

    /// <summary>Taxa by their scientific names; the others of a taxon that it belongs to itself.</summary>
    private string NotWith(Entry entry) => string.Join(Words["sentence.list_separator"], entry.Company.NotWith
        .Select(t => entry.Taxa.Contains(t.Value) ? Words.Say("fact.not_with_kin", ("taxon", t.Value)) : t.Value));

    public string List(string group, IEnumerable<Sourced<string>> words) =>
        string.Join(Words["sentence.list_separator"], words.Select(w => Words[$"{group}.{w.Value}"]));

    public string Plain(IEnumerable<Sourced<string>> texts) =>
        string.Join(Words["sentence.list_separator"], texts.Select(t => t.Value));
}
