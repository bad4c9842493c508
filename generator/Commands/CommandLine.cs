using CareSheets.Commands.Waters;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

/// <summary>The commands, their help, and what becomes of a call that none of them understands.</summary>
internal static class CommandLine
{
    public static int Run(string[] args)
    {
        var app = new CommandApp();
        app.Configure(Configure);
        return app.Run(args);
    }

    private static void Configure(IConfigurator configuration)
    {
        configuration.SetApplicationName("caresheets");
        configuration.UseStrictParsing();
        configuration.CancellationExitCode(ExitCode.WrongUse);
        configuration.SetExceptionHandler((failure, _) => Tell(failure));
        configuration.AddCommand<SiteCommand>("site")
            .WithDescription("Read the content, check it, and write the site with its papers.")
            .WithExample("site")
            .WithExample("site", "--into", "/srv/copperbeck")
            .WithExample("site", "--units", "metric");
        configuration.AddCommand<ProofCommand>("proof")
            .WithDescription("Proofread entries and write nothing: form, figures, names, links, relatives.")
            .WithExample("proof")
            .WithExample("proof", "danio-rerio", "betta-splendens")
            .WithExample("proof", "--json");
        configuration.AddCommand<RelativesCommand>("relatives")
            .WithDescription("What relatives say of a species; without a name, every value that fits none of them.")
            .WithExample("relatives")
            .WithExample("relatives", "danio-rerio")
            .WithExample("relatives", "\"Hoplisoma panda\"", "--json");
        configuration.AddCommand<ArrivalCommand>("arrival")
            .WithDescription("Draft the entry of a species that has arrived, from what its relatives say.")
            .WithExample("arrival", "\"Danio kyathit\"")
            .WithExample("arrival", "\"Devario aequipinnatus\"", "--family", "Danionidae")
            .WithExample("arrival", "\"Danio margaritus\"", "--new");
        configuration.AddCommand<PackingListCommand>("packing-list")
            .WithDescription("Read a supplier's list and write its arrival, ready for a person to go through.")
            .WithExample("packing-list", "larkwater.csv", "--supplier", "\"Larkwater Imports\"", "--date", "2026-11-24")
            .WithExample("packing-list", "larkwater.csv", "--answer", "12=danio-rerio", "--again")
            .WithExample("packing-list", "offer.xlsx", "--look");
        configuration.AddCommand<RenameCommand>("rename")
            .WithDescription("Give a species or a genus another name; the old one leads on for ever.")
            .WithExample("proof", "--if", "\"Danio rerio=Brachydanio rerio\"")
            .WithExample("rename", "\"Danio rerio\"", "\"Brachydanio rerio\"")
            .WithExample("rename", "Hoplisoma", "Corydoras");
        configuration.AddCommand<TankmatesCommand>("tankmates")
            .WithDescription("Will these species live together, in this tank, and why not.")
            .WithExample("tankmates", "danio-rerio", "betta-splendens")
            .WithExample("tankmates", "\"Hoplisoma panda\"", "paracheirodon-innesi", "--tank", "80x35x40cm")
            .WithExample("tankmates", "danio-rerio", "--tank", "\"20 US gal\"", "--json");
        configuration.AddCommand<CardsCommand>("cards")
            .WithDescription("Tank cards to print: of chosen species, or only those whose printed card is out of date.")
            .WithExample("cards", "--pdf")
            .WithExample("cards", "danio-rerio", "betta-splendens", "--size", "90x55mm")
            .WithExample("cards", "--stale", "--paper", "Letter");
        WaterBranch.Add(configuration);
    }

    /// <summary>A wrong call says what was wrong; anything else is a defect and shows where it happened.</summary>
    private static int Tell(Exception failure)
    {
        var errors = ConsoleOutput.Errors();
        if (failure is CommandAppException wrong)
        {
            if (wrong.Pretty is { } pretty)
                errors.Write(pretty);
            else
                errors.WriteLine(wrong.Message);
            errors.WriteLine("See: caresheets --help");
            return ExitCode.WrongUse;
        }
        errors.WriteLine("This is a defect of the program, not of your content. Please report it with these lines:");
        errors.WriteException(failure);
        return ExitCode.DefectOfOurs;
    }
}
