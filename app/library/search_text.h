// Texts made alike for searching: no case, no accents, DICOM's '^' between parts of a name is a space.
#pragma once

#include <QString>
#include <QStringList>

namespace gauge::app {

/// One searchable text of several. Dates written YYYYMMDD are found as YYYY-MM-DD too.
QString searchText(const QStringList& texts);

/// The words of a question, each to be found somewhere in a search text.
QStringList searchWords(const QString& question);

/// The pattern that LIKE finds a word with, '!' being the escape character.
QString likePattern(const QString& word);

} // namespace gauge::app
