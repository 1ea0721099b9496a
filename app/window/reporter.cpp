// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/reporter.h"

#include <QDir>
#include <QMessageBox>

namespace howlmap::app {

void report_trouble(QWidget* parent, const Trouble& trouble) {
    QStringList lines;
    for (const QString& line : {QDir::toNativeSeparators(trouble.file), trouble.detail, trouble.advice})
        if (!line.isEmpty()) lines.append(line);
    QMessageBox box(QMessageBox::Warning, QMessageBox::tr("Howlmap"), trouble.what, QMessageBox::Ok, parent);
    box.setObjectName(QStringLiteral("trouble"));
    box.setInformativeText(lines.join(QStringLiteral("\n\n")));
    box.setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    box.exec();
}

}  // namespace howlmap::app
