using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Reading.Conditions;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>
/// Tree of an entry to its record. It binds what it can and complains only about what a schema
/// can't see: figures and evidence. Where something required is missing, something without a place stands in.
/// </summary>
internal sealed class EntryBinder(EntrySchema schema, DiagnosticBag bag)
{
    private readonly QuantityBinder _quantities = new(bag);
    private readonly StandIns _standIns = new();

    /// <summary>Nothing of a draft, and where nothing tells which species it is of.</summary>
    public Entry? Bind(SourceFile file, YamlMapping root, FrontMatter text)
    {
        var fields = new Fields(root);
        var evidence = EvidenceWord.Read(fields.Text("evidence"));
        var care = new CareBinder(schema, _quantities, bag);
        var ranges = care.Ranges(fields.Inner("care"), evidence ?? Unknown(root));
        var (adult, tank, company) = (Adult(fields), Tank(fields), Company(fields));
        if (IsDraft(fields))
        {
            bag.Add(ReadingCodes.Draft, fields.Text("draft")!.Span);
            return null;
        }
        UnwrittenProse.Check(file, text, bag);
        var stated = Name(fields, "scientificName");
        if ((stated ?? StandIns.NameOf(file.Path)) is not { } name)
            return null;
        _standIns.Or(stated, name);
        var reviewed = new DateBinder(bag).Day(fields.Text("reviewed"), "reviewed");
        var (own, author) = (_standIns.Or(evidence, Unknown(root)), Word(fields, "scientificNameAuthorship"));
        return new Entry
        {
            Name = Path.GetFileNameWithoutExtension(file.Path),
            Span = stated?.Span ?? file.Whole,
            ScientificName = name,
            Authorship = author.With(new Authorship(author.Value)),
            OriginalName = _standIns.Or(Name(fields, "originalNameUsage"), name with { Span = SourceSpan.None }),
            VernacularNames = _standIns.Or(
                fields.Texts("vernacularName") is { Count: > 0 } names ? names : null, [StandIns.Word]),
            FormerNames = [.. fields.Texts("formerNames").Select(Name).OfType<Sourced<ScientificName>>()],
            Say = fields.Text("say"),
            TradeCodes = fields.Texts("tradeCodes"),
            Order = Word(fields, "order"),
            Family = Word(fields, "family"),
            Origin = Origin(fields.Inner("origin")),
            Adult = adult,
            Ranges = ranges,
            CareWords = care.Words(fields.Inner("care")),
            Tank = tank,
            Company = company,
            Diet = fields.Texts("diet"),
            Foods = fields.Texts("foods"),
            Cautions = fields.Texts("cautions"),
            Evidence = own,
            References = fields.Texts("references"),
            Reviewed = _standIns.Or(reviewed, new(DateOnly.MaxValue, SourceSpan.None)).Value,
            Prose = new Prose(text.Prose, file.Span(text.ProseLine, 1)),
            Accepted = AnswersBinder.Accepted(fields),
            Waived = AnswersBinder.Waived(fields),
            Fields = new EntryFieldsBinder(schema.Catalogue)
                .Bind(root, new Sourced<string>(text.Prose, file.Span(text.ProseLine, 1))),
            Activity = AdviceBinder.Activity(fields, own),
            Advice = AdviceBinder.Advice(fields),
            IsWhole = !_standIns.AreUsed,
        };
    }

    private static Origin Origin(Fields origin) => new(
        origin.Texts("countryCode"), origin.Texts("waterBody"), origin.Text("locality"), origin.Texts("habitat"));

    private Adult Adult(Fields fields)
    {
        var adult = fields.Inner("adult");
        var length = _quantities.BindClosed(adult.Text("length"), schema.Quantity("adult.length"), "adult.length");
        var height = _quantities.BindClosed(adult.Text("height"), schema.Quantity("adult.height"), "adult.height");
        var span = _quantities.Bind(adult.Text("lifeSpan"), schema.Quantity("adult.lifeSpan"), "adult.lifeSpan");
        return new Adult(_standIns.Or(length, StandIns.Length), height, Word(adult, "shape"), Word(adult, "mouth"),
            span, adult.Text("sexes"))
        {
            Fins = adult.Text("fins"),
            Evidence = Own(adult),
        };
    }

    private Tank Tank(Fields fields)
    {
        var tank = fields.Inner("tank");
        Sourced<Quantities.StatedRange>? Figure(string name) =>
            _quantities.BindClosed(tank.Text(name), schema.Quantity($"tank.{name}"), $"tank.{name}");
        var (length, width, height, volume) = (Figure("length"), Figure("width"), Figure("height"), Figure("volume"));
        return new Tank(_standIns.Or(length, StandIns.Length), width, height, _standIns.Or(volume, StandIns.Volume),
            Word(tank, "substrate"), Word(tank, "lid"), tank.Texts("needs"))
        {
            Evidence = Own(tank),
        };
    }

    private Company Company(Fields fields)
    {
        var company = fields.Inner("company");
        return new Company(Word(company, "lives"), _standIns.Or(company.Integer("group"), StandIns.Count),
            Word(company, "own kind"), Word(company, "others"), company.Texts("level"), company.Texts("eats"))
        {
            Neighbours = company.Text("neighbours"),
            NotWith = company.Texts("not with"),
            Evidence = Own(company),
        };
    }

    private Sourced<string> Word(Fields fields, string field) => _standIns.Or(fields.Text(field), StandIns.Word);

    private static Evidence? Own(Fields part) => EvidenceWord.Read(part.Text("evidence"));

    public static bool IsDraft(Fields fields) => fields.Text("draft")?.Value is "true" or "True" or "TRUE";

    private static Sourced<ScientificName>? Name(Fields fields, string field) =>
        fields.Text(field) is { } text ? Name(text) : null;

    private static Sourced<ScientificName>? Name(Sourced<string> text) =>
        ScientificName.Parse(text.Value) is { } name ? text.With(name) : null;

    /// <summary>Stands in while the figures of an entry without evidence are checked; it is never shown.</summary>
    private static Evidence Unknown(YamlMapping root) => new(EvidenceKind.FromMemory, "", root.Span);
}
