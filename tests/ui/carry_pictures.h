#pragma once

#include <QString>

namespace warmbench::tests {

/// Pictures of placing by hand and of blocking slots, light, dark and small, into a folder that ends in `/`.
void writeCarryPictures(const QString& folder);

} // namespace warmbench::tests
