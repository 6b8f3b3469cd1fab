#pragma once

#include <QString>

namespace warmbench::tests {

/// Writes pictures of the climate and results places, of a logger's file before it is kept, and of a batch's
/// forecast, into a folder.
void writeRootPictures(const QString& folder);

} // namespace warmbench::tests
