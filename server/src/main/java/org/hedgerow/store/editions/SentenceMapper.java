package org.hedgerow.store.editions;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.phonics.Catalogue;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.StatementContext;

/** A sentence from a row with its text, the id of its value, and its accents. */
record SentenceMapper(Catalogue catalogue) implements RowMapper<Sentence> {
  @Override
  public Sentence map(ResultSet row, StatementContext context) throws SQLException {
    return new Sentence(
        row.getString("text"),
        catalogue.get(row.getInt("correspondence_id")),
        Arrays.asList((String[]) row.getArray("accents").getArray()));
  }
}
