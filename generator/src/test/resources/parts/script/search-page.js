look();
