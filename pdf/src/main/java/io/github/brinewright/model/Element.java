package io.github.brinewright.model;

/** One thing that a section shows, from top to bottom. */
public sealed interface Element
    permits Chart,
        Columns,
        Facts,
        Fields,
        Heading,
        Items,
        Notes,
        Paragraph,
        Picture,
        References,
        Rows,
        Table,
        Ticks,
        Together,
        Topic,
        WritingLines {}
