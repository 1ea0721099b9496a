// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/recovery_dialog.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace howlmap::app {
namespace {

QStringList columns_of(const Recoverable& copy) {
    const bool saved = !copy.path.isEmpty();
    QString name = saved ? QFileInfo(copy.path).completeBaseName() : copy.title;
    if (name.isEmpty()) name = RecoveryDialog::tr("New show");
    return {name, saved ? QDir::toNativeSeparators(copy.path) : RecoveryDialog::tr("never saved"),
            QLocale().toString(copy.time, QLocale::ShortFormat)};
}

}  // namespace

RecoveryDialog::RecoveryDialog(const QList<Recoverable>& copies, QWidget* parent) : QDialog(parent), copies_(copies) {
    setWindowTitle(tr("Unsaved changes were found"));
    setObjectName(QStringLiteral("recovery"));
    resize(640, 280);
    auto* words = new QLabel(
        tr("Howlmap did not end as it should. These changes were kept aside; your files are as you last saved them."));
    words->setWordWrap(true);
    list_ = new QTreeWidget;
    list_->setRootIsDecorated(false);
    list_->setHeaderLabels({tr("Show"), tr("File"), tr("Kept at")});
    list_->setAccessibleName(tr("Unsaved changes"));
    list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    for (const Recoverable& copy : copies_) new QTreeWidgetItem(list_, columns_of(copy));
    list_->setCurrentItem(list_->topLevelItem(0));
    list_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);

    auto* buttons = new QDialogButtonBox;
    auto* restore = buttons->addButton(tr("&Restore"), QDialogButtonBox::AcceptRole);
    auto* discard = buttons->addButton(tr("&Discard"), QDialogButtonBox::DestructiveRole);
    auto* later = buttons->addButton(tr("&Later"), QDialogButtonBox::RejectRole);
    restore->setDefault(true);
    connect(restore, &QPushButton::clicked, this, &RecoveryDialog::restore);
    connect(discard, &QPushButton::clicked, this, &RecoveryDialog::discard);
    connect(later, &QPushButton::clicked, this, &QDialog::reject);

    auto* column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(list_);
    column->addWidget(buttons);
}

void RecoveryDialog::restore() {
    const int row = list_->indexOfTopLevelItem(list_->currentItem());
    if (row < 0) return;
    chosen_ = copies_[row];
    accept();
}

void RecoveryDialog::discard() {
    for (QTreeWidgetItem* item : list_->selectedItems()) {
        const int row = list_->indexOfTopLevelItem(item);
        remove_recoverable(copies_.takeAt(row));
        delete item;
    }
    if (copies_.isEmpty()) reject();
}

}  // namespace howlmap::app
