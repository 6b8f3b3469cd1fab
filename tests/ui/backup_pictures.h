#pragma once

#include <QString>

namespace warmbench::tests {

/// The list of a book's backups and the window with a backup's trouble, in both themes, into a folder.
void writeBackupPictures(const QString& folder);

} // namespace warmbench::tests
