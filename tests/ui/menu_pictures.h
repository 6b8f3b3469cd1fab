#pragma once

#include <QString>

namespace warmbench::tests {

/// Pictures of the menu of a batch, of a zone as it is drawn and of what was typed and left, light, dark and
/// small, into a folder that ends in `/`.
void writeMenuPictures(const QString& folder);

} // namespace warmbench::tests
