using CareSheets.Commands;

// Patterns of the schemas run on text from people: none may take for ever.
AppDomain.CurrentDomain.SetData("REGEX_DEFAULT_MATCH_TIMEOUT", TimeSpan.FromMilliseconds(500));
return CommandLine.Run(args);
