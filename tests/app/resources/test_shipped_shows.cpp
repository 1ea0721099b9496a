// SPDX-License-Identifier: GPL-3.0-or-later
// Examples and empty stages open without complaint and stand in the files exactly as the program would write them.
#include <QDir>
#include <QFile>

#include "core/file/read.h"
#include "core/file/write.h"
#include "tests/support/registry.h"

class ShippedShowsTest : public QObject {
    Q_OBJECT

  private Q_SLOTS:
    void canonical_data() {
        QTest::addColumn<QString>("path");
        for (const char* folder : {"/examples", "/resources/stages"}) {
            const QDir dir(QStringLiteral(HOWLMAP_SOURCE_DIR) + QLatin1String(folder));
            const QStringList files = dir.entryList({QStringLiteral("*.howlmap")});
            QVERIFY(files.size() >= 4);
            for (const QString& file : files) QTest::newRow(qPrintable(file)) << dir.filePath(file);
        }
    }

    void canonical() {
        QFETCH(QString, path);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const std::string text = file.readAll().toStdString();
        const auto read = howlmap::read_show(text);
        QVERIFY2(read, read ? "" : read.error().message(path.toStdString()).c_str());
        QVERIFY(howlmap::write_show(read->show) == text);
    }
};

HOWLMAP_TEST(ShippedShowsTest)
#include "test_shipped_shows.moc"
